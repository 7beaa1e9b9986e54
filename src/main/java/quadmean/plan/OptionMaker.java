package quadmean.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import quadmean.plan.PlanOption.CurvePoint;
import quadmean.plan.PlanOption.Size;
import quadmean.plan.PlanOption.Spread;
import quadmean.plan.PlanOption.Surer;
import quadmean.plan.PlanOption.TargetResult;
import quadmean.plan.SampleForm.Scope;
import quadmean.stats.PlannedSample;
import quadmean.stats.SampleSearch;
import quadmean.stats.SampleSearch.Goal;

/** Finds the sizes of one way to sample. */
final class OptionMaker {
    private static final double[] PROBABILITIES = {0.8, 0.9};
    /** Points of a curve, and how far beyond the target it goes. */
    private static final int STEPS = 60;

    private static final double BEYOND = 2.5;

    private final SampleForm form;
    private final List<TargetOutlook> targets;
    private final List<PlannedSample> samples;

    private OptionMaker(SampleForm form, List<TargetOutlook> targets) {
        this.form = form;
        this.targets = form.scope() == Scope.ALL_TARGETS ? targets : targets.subList(0, 1);
        this.samples = this.targets.stream().map(form.sample()).toList();
    }

    /** The option, with the sample that a budget pays for where there is one. */
    static PlanOption option(SampleForm form, List<TargetOutlook> targets, OptionalDouble budget) {
        return new OptionMaker(form, targets).option(budget);
    }

    /** Units that reach the goals that the targets turn into, each target by itself; empty where one is out of reach. */
    private Optional<int[]> reach(Function<TargetOutlook, Goal> goals) {
        int[] parts = new int[form.partNames().size()];
        for (int i = 0; i < samples.size(); i++) {
            OptionalInt n = SampleSearch.smallest(samples.get(i), goals.apply(targets.get(i)));
            if (n.isEmpty()) {
                return Optional.empty();
            }
            int[] own = samples.get(i).parts(n.getAsInt());
            Arrays.setAll(parts, k -> Math.max(parts[k], own[k]));
        }
        return Optional.of(parts);
    }

    private PlanOption option(OptionalDouble budget) {
        Optional<int[]> parts = reach(t -> t.target().goal());
        Optional<Size> paid = Optional.empty();
        if (budget.isPresent()) {
            OptionalInt n =
                    SampleSearch.affordable(samples.get(0), form.fixedCost(), form.costs(), budget.getAsDouble());
            paid = n.isPresent() ? Optional.of(size(samples.get(0).parts(n.getAsInt()))) : Optional.empty();
        }
        return new PlanOption(
                form.kind(),
                form.name(),
                form.partNames(),
                parts.map(this::size),
                results(parts),
                surer(),
                paid,
                curve(),
                notes(parts));
    }

    private List<String> notes(Optional<int[]> parts) {
        List<String> notes = new ArrayList<>(form.notes());
        parts.ifPresent(p -> notes.addAll(form.remarks().apply(p)));
        return notes;
    }

    private Size size(int[] parts) {
        return new Size(
                Arrays.stream(parts).boxed().toList(),
                form.kind().plots(parts),
                SampleSearch.cost(parts, form.fixedCost(), form.costs()),
                errorPercent(0, parts));
    }

    private double errorPercent(int target, int[] parts) {
        return samples.get(target)
                .expected(parts)
                .samplingErrorPercent(targets.get(target).target().confidence());
    }

    private List<TargetResult> results(Optional<int[]> parts) {
        List<TargetResult> results = new ArrayList<>();
        for (int i = 0; i < samples.size(); i++) {
            PlannedSample sample = samples.get(i);
            Goal goal = targets.get(i).target().goal();
            OptionalInt alone = SampleSearch.smallest(sample, goal);
            double pilotDf = targets.get(i).pilotDf();
            results.add(new TargetResult(
                    targets.get(i).target(),
                    alone.isPresent()
                            ? OptionalInt.of(form.kind().plots(sample.parts(alone.getAsInt())))
                            : OptionalInt.empty(),
                    parts.isPresent() ? errorPercent(i, parts.get()) : Double.NaN,
                    parts.isPresent() ? SampleSearch.assurance(sample, parts.get(), goal) : Double.NaN,
                    parts.isPresent() && Double.isFinite(pilotDf)
                            ? SampleSearch.assurance(sample, parts.get(), goal.assured(0, pilotDf))
                            : Double.NaN));
        }
        return results;
    }

    private List<Surer> surer() {
        List<Surer> surer = new ArrayList<>();
        for (double p : PROBABILITIES) {
            surer.add(new Surer(
                    p, Spread.KNOWN, reach(t -> t.target().goal().assured(p)).map(this::size)));
        }
        if (targets.stream().anyMatch(t -> Double.isFinite(t.pilotDf()))) {
            for (double p : PROBABILITIES) {
                surer.add(new Surer(
                        p,
                        Spread.FROM_PILOT,
                        reach(t -> t.target().goal().assured(p, t.pilotDf())).map(this::size)));
            }
        }
        return surer;
    }

    /** From the smallest sample to well beyond the first target, sizes in equal steps. */
    private List<CurvePoint> curve() {
        PlannedSample sample = samples.get(0);
        OptionalInt n = SampleSearch.smallest(sample, targets.get(0).target().goal());
        if (n.isEmpty()) {
            return List.of();
        }
        int last = (int) Math.min(sample.most(), Math.ceil(BEYOND * Math.max(n.getAsInt(), 2 * sample.least())));
        List<CurvePoint> curve = new ArrayList<>();
        for (int k = 0; k < STEPS; k++) {
            int size = sample.least() + (int) Math.rint((double) (last - sample.least()) * k / (STEPS - 1));
            Size at = size(sample.parts(size));
            if (curve.isEmpty() || at.plots() > curve.get(curve.size() - 1).plots()) {
                curve.add(new CurvePoint(at.plots(), at.cost(), at.errorPercent()));
            }
        }
        return curve;
    }
}
