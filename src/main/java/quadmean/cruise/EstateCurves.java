package quadmean.cruise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import quadmean.design.Design;
import quadmean.height.CurveTable;
import quadmean.height.FillingCurves;
import quadmean.height.HeightSettings;
import quadmean.model.Calibration;
import quadmean.model.FillingCurve;
import quadmean.model.Tree;

/** Fits the curves of an estate: for each region by itself, to the heights drawn in it. */
final class EstateCurves {
    private EstateCurves() {}

    /** The curves by number of the region, all regions at the same time. */
    static List<FillingCurves> fit(EstateJob job, HeightDraw draw) {
        return IntStream.range(0, job.regions().size())
                .parallel()
                .mapToObj(region -> fit(job.design(), draw.drawn(region), draw.most()))
                .toList();
    }

    private static FillingCurves fit(Design design, List<Tree> drawn, int most) {
        HeightSettings settings = settings(design);
        Map<Tree, Finding> odd = HeightFindings.find(design, settings, drawn);
        List<Tree> trusted = drawn.stream().filter(t -> !odd.containsKey(t)).toList();
        return FillingCurves.of(CurveTable.fit(trusted, some(trusted, most), settings), trusted);
    }

    /** So many trees of all species, in the shares that they have. */
    private static List<Tree> some(List<Tree> trees, int most) {
        int step = Math.max(1, (trees.size() + most - 1) / most);
        return IntStream.range(0, trees.size())
                .filter(i -> i % step == 0)
                .mapToObj(trees::get)
                .toList();
    }

    /** The plots of an estate go by one by one: no curve is moved to the level of a plot. */
    private static HeightSettings settings(Design design) {
        HeightSettings usual = Cruise.heightSettings(design);
        return new HeightSettings(
                usual.units(),
                usual.breastHeight(),
                usual.formBySpecies(),
                usual.groupBySpecies(),
                usual.minHeights(),
                usual.offCurve(),
                usual.weights(),
                Calibration.NEVER);
    }

    /** Curves by number of the region out of a list of them by name; a region that the list does not have gets none. */
    static List<FillingCurves> byRegion(EstateJob job, Map<String, List<FillingCurve>> named) {
        List<FillingCurves> curves = new ArrayList<>();
        job.regions().forEach(region -> curves.add(FillingCurves.of(named.getOrDefault(region, List.of()))));
        return curves;
    }
}
