package quadmean.volume;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A stem measured at several heights, from which its volume follows section by section. */
public final class StemSections {
    private final List<StemPoint> points;
    private final double totalHeightM;
    private final Side side;

    private StemSections(List<StemPoint> points, double totalHeightM, Side side) {
        StemProblems.check(points, totalHeightM, side);
        this.points = List.copyOf(points);
        this.totalHeightM = totalHeightM;
        this.side = side;
    }

    /** Where diameters were measured. */
    public enum Side {
        OUTSIDE_BARK,
        INSIDE_BARK
    }

    /**
     * A measured stem.
     *
     * @param points diameters, the lowest first
     * @param totalHeightM height of the tip (m); NaN if it is not known
     * @param side whether the diameters are outside bark
     * @throws IllegalArgumentException if heights do not increase, a size is out of its domain, or there are too few
     *     points; all that is wrong is named
     */
    public static StemSections of(List<StemPoint> points, double totalHeightM, Side side) {
        return new StemSections(points, totalHeightM, side);
    }

    /** Where its diameters lie. */
    public Side side() {
        return side;
    }

    /** Its points, the lowest first. */
    public List<StemPoint> points() {
        return points;
    }

    /** Height of the tip (m); NaN if it is not known. */
    public double totalHeightM() {
        return totalHeightM;
    }

    /**
     * The stem without bark: measured thickness is taken off where there is one, else what the formula says.
     *
     * @param bark formula for points without a measured thickness, if there is one
     * @throws IllegalArgumentException if a point has neither; all such points are named
     */
    public StemSections insideBark(Optional<Bark> bark) {
        if (side == Side.INSIDE_BARK) {
            return this;
        }
        List<StemPoint> inside = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (StemPoint p : points) {
            if (!Double.isNaN(p.barkCm())) {
                inside.add(StemPoint.of(p.heightM(), p.diameterCm() - 2 * p.barkCm()));
            } else if (bark.isPresent()) {
                inside.add(StemPoint.of(p.heightM(), bark.get().insideCm(p.diameterCm())));
            } else {
                unknown.add(p.heightM() + " m");
            }
        }
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException(
                    "no bark measured and no bark formula at heights of " + String.join(", ", unknown));
        }
        return new StemSections(inside, totalHeightM, Side.INSIDE_BARK);
    }

    /** Places where the stem is thicker than below, which may be a bulge or a slip. */
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            StemPoint below = points.get(i - 1);
            StemPoint p = points.get(i);
            if (p.diameterCm() > below.diameterCm()) {
                remarks.add(String.format(
                        Locale.ROOT,
                        "The diameter grows upward, from %s cm at %s m to %s cm at %s m.",
                        below.diameterCm(),
                        below.heightM(),
                        p.diameterCm(),
                        p.heightM()));
            }
        }
        return List.copyOf(remarks);
    }

    /**
     * Volume of a part of the stem, on the side of the bark that its diameters are on. Between measured points
     * diameters lie on straight lines (common practice, no source), above the highest on the solid chosen for the tip.
     *
     * @throws IllegalArgumentException if the stump lies below the lowest point, or above all that is known
     */
    public StemVolume volume(StemPart cut) {
        return new SectionSum(this, cut).volume();
    }
}
