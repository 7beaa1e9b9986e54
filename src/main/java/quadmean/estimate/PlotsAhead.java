package quadmean.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import quadmean.estimate.PlotsNeeded.Verdict;
import quadmean.model.Stratum;
import quadmean.stats.Allocation;
import quadmean.stats.Allocation.PlannedStratum;
import quadmean.stats.Moments;
import quadmean.stats.NextUnits;
import quadmean.stats.SampleSize;
import quadmean.stats.StratumSample;
import quadmean.units.Attribute;

/** Works out how many more plots the target takes, from what the plots run have shown. */
final class PlotsAhead {
    /** The gain curve goes so far beyond the plots needed that it shows what still more would bring: our choice. */
    private static final double BEYOND = 1.25;

    private static final int STEPS = 41;

    private final Sample sample;
    private final List<Stratum> strata;
    private final int plots;
    private final EstimateSettings settings;
    private final NextUnits.Target target;

    PlotsAhead(Sample sample, List<Stratum> strata, int plots, EstimateSettings settings) {
        this.sample = sample;
        this.strata = strata;
        this.plots = plots;
        this.settings = settings;
        this.target = new NextUnits.Target(
                settings.targetErrorPercent(), settings.confidence(), StratifiedSample.degrees(settings));
    }

    /**
     * Plots needed for an attribute.
     *
     * @param achievedPercent sampling error of the stand's estimate (percent); NaN if unknown
     */
    PlotsNeeded of(Attribute attribute, double achievedPercent) {
        List<StratumSample> units = sample.samples(PlotValue.of(settings.plot(), attribute, stem -> true));
        Verdict verdict = Verdict.of(achievedPercent, target.errorPercent());
        String why = why(units);
        List<PlotShares> shares = why.isEmpty() ? shares(units) : List.of();
        OptionalInt reached = shares.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(shares.get(0).needed());
        OptionalInt needed = verdict == Verdict.MET ? smallest(units, reached) : reached;
        String remark = why.isEmpty() ? remark(verdict, shares) : why;
        return new PlotsNeeded(attribute, achievedPercent, plots, needed, verdict, shares, remark);
    }

    /** Why the plots do not tell; empty if they do. */
    private String why(List<StratumSample> units) {
        if (units.isEmpty()) {
            return "the error does not go by the number of plots alone";
        }
        List<String> single = new ArrayList<>();
        for (int h = 0; h < units.size(); h++) {
            if (units.get(h).values().length < 2) {
                single.add(code(units, h));
            }
        }
        if (!single.isEmpty()) {
            return "one plot in " + String.join(", ", single)
                    + " shows no variation: run a second one there, and the number can be worked out";
        }
        double mean = Moments.sum(units.stream()
                .mapToDouble(u -> u.weight() * Moments.of(u.values()).mean())
                .toArray());
        return mean > 0 ? "" : "the estimate is not above zero, and an error in percent of it has no meaning";
    }

    private String remark(Verdict verdict, List<PlotShares> shares) {
        if (shares.isEmpty()) {
            return "the target is out of reach: " + SampleSize.LARGEST + " plots would not be enough";
        }
        List<String> remarks = new ArrayList<>();
        if (!(sample instanceof StratifiedSample)) {
            remarks.add("worked out as if plots were drawn at random" + (strata.size() > 1 ? " within strata" : ""));
        }
        if (verdict == Verdict.MISSED && shares.get(0).more() == 0) {
            remarks.add(
                    "as a random sample with limits by Student's t these plots would reach the target; the limits in"
                            + " use are wider, and how many plots they take is not known");
        }
        return String.join("; ", remarks);
    }

    /** By area; with strata also by area and variation. None where the target is out of reach. */
    private List<PlotShares> shares(List<StratumSample> units) {
        List<PlotShares> shares = new ArrayList<>();
        for (Allocation allocation : List.of(Allocation.PROPORTIONAL, Allocation.NEYMAN)) {
            if (allocation == Allocation.PROPORTIONAL || units.size() > 1) {
                NextUnits.reach(units, allocation, target).ifPresent(n -> shares.add(shares(units, allocation, n)));
            }
        }
        return shares;
    }

    private PlotShares shares(List<StratumSample> units, Allocation allocation, NextUnits reached) {
        List<StratumPlots> each = new ArrayList<>();
        for (int h = 0; h < units.size(); h++) {
            each.add(new StratumPlots(code(units, h), units.get(h).values().length, reached.units()[h]));
        }
        OptionalInt for90 = assured(units, allocation, 0.9);
        int largest = (int) Math.min(
                SampleSize.LARGEST, Math.ceil(BEYOND * Math.max(reached.total(), for90.orElse(reached.total()))));
        List<GainPoint> gain = NextUnits.gainCurve(units, allocation, target, largest, STEPS).stream()
                .map(n -> new GainPoint(n.total(), n.expectedErrorPercent()))
                .toList();
        return new PlotShares(
                allocation,
                each,
                reached.expectedErrorPercent(),
                reached.assurance(),
                assured(units, allocation, 0.8),
                for90,
                gain);
    }

    private OptionalInt assured(List<StratumSample> units, Allocation allocation, double assurance) {
        Optional<NextUnits> sure = NextUnits.reach(units, allocation, target, assurance);
        return sure.isPresent() ? OptionalInt.of(sure.get().total()) : OptionalInt.empty();
    }

    /** Plots that would have done, had none been run; shared among strata by area. */
    private OptionalInt smallest(List<StratumSample> units, OptionalInt run) {
        List<PlannedStratum> planned = new ArrayList<>();
        for (StratumSample s : units) {
            Moments m = Moments.of(s.values());
            planned.add(new PlannedStratum(s.weight(), s.populationUnits(), m.mean(), m.sd()));
        }
        if (!(planned.stream().mapToDouble(PlannedStratum::sd).sum() > 0)) {
            return run;
        }
        if (planned.size() == 1) {
            PlannedStratum only = planned.get(0);
            return SampleSize.simpleRandom(
                    100 * only.sd() / only.mean(), target.errorPercent(), target.confidence(), only.populationUnits());
        }
        int[] enough = Allocation.PROPORTIONAL.smallest(target.errorPercent(), target.confidence(), planned);
        return enough == null
                ? OptionalInt.empty()
                : OptionalInt.of(Arrays.stream(enough).sum());
    }

    private String code(List<StratumSample> units, int h) {
        return units.size() == strata.size() ? strata.get(h).code() : Integer.toString(h + 1);
    }
}
