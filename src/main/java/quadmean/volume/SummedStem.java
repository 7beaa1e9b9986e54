package quadmean.volume;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quadmean.model.FelledStem;
import quadmean.model.FelledTree;
import quadmean.model.StemReading;
import quadmean.volume.StemSections.Side;

/**
 * A measured stem with its volume.
 *
 * @param stem what was measured
 * @param volume its sections, inside bark where bark was measured
 * @param wholeM3 volume from the stump to the tip (m³), whatever the top diameter
 */
public record SummedStem(FelledStem stem, StemVolume volume, double wholeM3) {
    /**
     * Sums a stem.
     *
     * @throws IllegalArgumentException if the settings do not suit the stem
     */
    static SummedStem of(FelledStem stem, SectionSettings settings) {
        List<StemPoint> points = new ArrayList<>();
        boolean hasBark = false;
        for (StemReading r : stem.readings()) {
            points.add(new StemPoint(r.heightM(), r.diameterCm(), r.barkCm()));
            hasBark |= !Double.isNaN(r.barkCm());
        }
        StemSections measured = StemSections.of(points, stem.heightM(), Side.OUTSIDE_BARK);
        StemSections sections = hasBark ? measured.insideBark(Optional.empty()) : measured;
        StemPart part = settings.part(points.get(0).heightM());
        StemPart whole = new StemPart(part.stumpM(), 0, part.rule(), part.tip());
        return new SummedStem(
                stem, sections.volume(part), sections.volume(whole).volumeM3());
    }

    /** The tree for fitting equations. */
    public FelledTree tree() {
        return new FelledTree(stem.id(), stem.row(), stem.species(), stem.dbhCm(), stem.heightM(), volume.volumeM3());
    }
}
