package quadmean.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quadmean.design.Design;
import quadmean.design.PlanSettings.RangeRule;
import quadmean.design.PlanSettings.TargetEntry;
import quadmean.design.StratumEntry;
import quadmean.stats.ExpectedRange;
import quadmean.units.Attribute;

/**
 * The variation that a design states.
 *
 * @param words where it comes from, in words
 * @param targets targets with what is expected; empty if something is missing
 * @param missing what is missing and how to state it, in sentences
 */
public record StatedVariation(String words, List<TargetOutlook> targets, List<String> missing) {
    /** Standard deviations in a range that was guessed: common practice, no source. */
    private static final double GUESSED_RANGE = 4;

    public StatedVariation {
        targets = List.copyOf(targets);
        missing = List.copyOf(missing);
    }

    /** The targets of a design, that of the cruise first, without what is expected. */
    public static List<PlanTarget> targets(Design design) {
        List<PlanTarget> targets = new ArrayList<>();
        targets.add(new PlanTarget(design.targetAttribute(), design.targetErrorPercent(), design.confidence()));
        for (TargetEntry t : design.plan().targets()) {
            targets.add(new PlanTarget(t.attribute(), t.errorPercent(), t.confidence()));
        }
        return targets;
    }

    /** Reads the design for it. */
    public static StatedVariation of(Design design) {
        List<TargetOutlook> outlooks = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        List<PlanTarget> targets = targets(design);
        for (int i = 0; i < targets.size(); i++) {
            Optional<List<StratumOutlook>> strata = i == 0
                    ? first(design)
                    : further(design, design.plan().targets().get(i - 1));
            if (strata.isPresent()) {
                outlooks.add(new TargetOutlook(targets.get(i), strata.get()));
            } else {
                missing.add(missing(design, targets.get(i).attribute(), i));
            }
        }
        return new StatedVariation(words(design), missing.isEmpty() ? outlooks : List.of(), missing);
    }

    private static String missing(Design design, Attribute attribute, int index) {
        boolean single = design.strata().size() == 1;
        String how = index == 0
                ? single ? "plan.cv, plan.range," : "each stratum expected_mean and expected_cv,"
                : single ? "its target cv," : "its target stratum_mean and stratum_cv for each stratum,";
        return "the variation of " + attribute.label() + " between plots is not known: give " + how
                + " plan.pilot = \"tally\", or plan.previous";
    }

    private static Optional<List<StratumOutlook>> first(Design design) {
        OptionalDouble cv = design.plan().range().isPresent()
                ? OptionalDouble.of(cv(design.plan().range().get()))
                : design.plan().cvPercent();
        if (design.strata().size() == 1 && cv.isPresent()) {
            StratumEntry only = design.strata().get(0);
            return Optional.of(List.of(outlook(design, only, only.expectedMean().orElse(1), cv.getAsDouble())));
        }
        List<StratumOutlook> strata = new ArrayList<>();
        for (StratumEntry s : design.strata()) {
            if (s.expectedMean().isEmpty() || s.expectedCvPercent().isEmpty()) {
                return Optional.empty();
            }
            strata.add(outlook(
                    design,
                    s,
                    s.expectedMean().getAsDouble(),
                    s.expectedCvPercent().getAsDouble()));
        }
        return Optional.of(strata);
    }

    private static Optional<List<StratumOutlook>> further(Design design, TargetEntry target) {
        if (design.strata().size() == 1 && target.cvPercent().isPresent()) {
            StratumEntry only = design.strata().get(0);
            return Optional.of(
                    List.of(outlook(design, only, 1, target.cvPercent().getAsDouble())));
        }
        List<StratumOutlook> strata = new ArrayList<>();
        for (StratumEntry s : design.strata()) {
            Double mean = target.means().get(s.stratum().code());
            Double cv = target.cvs().get(s.stratum().code());
            if (mean == null || cv == null) {
                return Optional.empty();
            }
            strata.add(outlook(design, s, mean, cv));
        }
        return Optional.of(strata);
    }

    /** Pilot plots spread evenly over the strata; only their number less the strata counts. */
    private static StratumOutlook outlook(Design design, StratumEntry s, double mean, double cv) {
        int strata = design.strata().size();
        int all = pilotPlots(design).orElse(0);
        int own = all / strata + (s.equals(design.strata().get(0)) ? all % strata : 0);
        return new StratumOutlook(s.stratum().code(), s.stratum().areaHa(), mean, cv, own);
    }

    private static OptionalInt pilotPlots(Design design) {
        OptionalInt ranged = design.plan().range().map(RangeRule::plots).orElse(OptionalInt.empty());
        return ranged.isPresent() ? ranged : design.plan().pilotPlots();
    }

    /** Range over its expected number of standard deviations, in percent of the mean. */
    private static double cv(RangeRule range) {
        return 100 * (range.high() - range.low()) / deviations(range) / range.mean();
    }

    private static double deviations(RangeRule range) {
        return range.plots().isPresent() ? ExpectedRange.ofNormal(range.plots().getAsInt()) : GUESSED_RANGE;
    }

    private static String words(Design design) {
        if (design.plan().range().isEmpty()) {
            return "as stated in the design";
        }
        RangeRule range = design.plan().range().get();
        String why = range.plots().isPresent()
                ? "the range that " + range.plots().getAsInt()
                        + " plots of a normal population show (Tippett 1925, from" + " memory)"
                : "common practice, no source";
        return String.format(
                Locale.ROOT,
                "from the range, %.3g standard deviations wide (%s): CV %.1f %%",
                deviations(range),
                why,
                cv(range));
    }
}
