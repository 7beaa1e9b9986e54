package quadmean.height;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.model.Calibration;
import quadmean.model.CurveForm;
import quadmean.model.Tree;

/** Curves fitted again to resampled trees, their forms and who borrows from whom held as they were. */
final class CurveRefit {
    /** A fit of its own stays one as long as there are heights for three parameters and an error. */
    private static final int LEAST_HEIGHTS = 4;

    private final HeightSettings settings;

    private CurveRefit(HeightSettings settings) {
        this.settings = settings;
    }

    static CurveTable of(CurveTable before, List<Tree> trees, HeightSettings settings) {
        CurveRefit refit = new CurveRefit(settings);
        Map<String, List<Tree>> bySpecies = new LinkedHashMap<>();
        Map<String, List<Tree>> byGroup = new LinkedHashMap<>();
        for (Tree tree : trees) {
            bySpecies.computeIfAbsent(tree.species(), k -> new ArrayList<>()).add(tree);
            String group = settings.groupBySpecies().getOrDefault(tree.species(), "");
            byGroup.computeIfAbsent(group, k -> new ArrayList<>()).add(tree);
        }
        SpeciesCurve pooled = refit.pooled(before.pooled(), trees);
        Map<String, SpeciesCurve> groups = new LinkedHashMap<>();
        before.byGroup()
                .forEach((group, old) ->
                        groups.put(group, refit.search(old, byGroup.getOrDefault(group, List.of()), pooled)));
        Map<String, SpeciesCurve> species = new LinkedHashMap<>();
        before.bySpecies().forEach((code, old) -> {
            SpeciesCurve lender = groups.getOrDefault(settings.groupBySpecies().getOrDefault(code, ""), pooled);
            species.put(code, refit.search(old, bySpecies.getOrDefault(code, List.of()), lender));
        });
        return before.with(pooled, groups, species);
    }

    private SpeciesCurve pooled(SpeciesCurve old, List<Tree> trees) {
        HeightCurve curve = old.chosen();
        if (curve == null || tooFew(trees)) {
            return old;
        }
        SpeciesCurve now = new CurveChoice(settings, List.of(curve.form())).pooled(trees);
        return now.chosen() == null ? old : now;
    }

    private SpeciesCurve search(SpeciesCurve old, List<Tree> trees, SpeciesCurve lender) {
        HeightCurve curve = old.chosen();
        if (curve == null) {
            return old;
        }
        if (!old.isOwn()) {
            return new CurveChoice(held(Integer.MAX_VALUE, old), List.of())
                    .search(old.species(), old.scope(), trees, lender);
        }
        if (tooFew(trees)) {
            return old;
        }
        CurveForm form = curve.form();
        SpeciesCurve now = new CurveChoice(held(LEAST_HEIGHTS, old), List.of(form))
                .search(old.species(), old.scope(), trees, lender);
        return now.isOwn() ? now : old;
    }

    private static boolean tooFew(List<Tree> trees) {
        return trees.stream().filter(t -> t.height() != null).count() < LEAST_HEIGHTS;
    }

    private HeightSettings held(int minHeights, SpeciesCurve old) {
        return new HeightSettings(
                settings.units(),
                settings.breastHeight(),
                Map.of(),
                settings.groupBySpecies(),
                minHeights,
                settings.offCurve(),
                settings.weights(),
                old.used() == null ? Calibration.NEVER : settings.calibration());
    }
}
