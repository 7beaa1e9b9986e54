package quadmean.cruise;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import quadmean.design.Design;
import quadmean.estimate.Expansion;
import quadmean.height.CurveTable;
import quadmean.height.HeightCurve;
import quadmean.height.MoreHeights;
import quadmean.height.SpeciesCurve;
import quadmean.model.Tree;
import quadmean.units.BasalArea;

/** Which heights to take next, species by species. */
final class HeightAdvice {
    private static final int MOST_NEXT = 8;
    private static final int MOST_PLANNED = 40;

    private HeightAdvice() {}

    /** For each species with a curve of its own and trees without a height, the heights to take next. */
    static List<MoreHeights> next(Design design, List<Tree> trees, CurveTable curves) {
        return advice(
                trees,
                curves,
                t -> t.height() == null,
                (c, t) -> MoreHeights.of(c, t, tree -> weight(design, tree), MOST_NEXT));
    }

    /** For each species with a curve of its own, the heights to take if none had been. */
    static List<MoreHeights> plan(Design design, List<Tree> trees, CurveTable curves) {
        return advice(
                trees,
                curves,
                t -> true,
                (c, t) -> MoreHeights.afresh(c, t, tree -> weight(design, tree), MOST_PLANNED));
    }

    private static List<MoreHeights> advice(
            List<Tree> trees,
            CurveTable curves,
            Predicate<Tree> concerned,
            BiFunction<HeightCurve, List<Tree>, MoreHeights> advise) {
        List<MoreHeights> advice = new ArrayList<>();
        for (SpeciesCurve search : curves.species()) {
            HeightCurve curve = search.chosen();
            List<Tree> members = trees.stream()
                    .filter(t -> t.species().equals(search.species()))
                    .toList();
            if (curve != null && search.isOwn() && members.stream().anyMatch(concerned)) {
                advice.add(advise.apply(curve, members));
            }
        }
        return advice;
    }

    /** A tree weighs as much as the basal area that it stands for. */
    private static double weight(Design design, Tree t) {
        return t.detail().times() * Expansion.treesPerHa(design.plot(), t.dbhCm()) * BasalArea.ofTree(t.dbhCm());
    }
}
