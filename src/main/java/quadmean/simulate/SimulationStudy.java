package quadmean.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import quadmean.design.Design;
import quadmean.model.IntervalRule;
import quadmean.model.PlotDesign;
import quadmean.model.Progress;

/**
 * Designs tried in one forest.
 *
 * @param forest what the forest is called
 * @param trees number of its trees
 * @param areaHa its ground (ha)
 * @param first what came of the design in question
 * @param ladder the same with more plots, where its limits held the truth too seldom; the last step is the first that is good enough,
 *     or the largest tried
 * @param beside what came of others that take as long
 * @param verdict what it means, in sentences
 */
public record SimulationStudy(
        String forest,
        int trees,
        double areaHa,
        SimulationResult first,
        List<LadderStep> ladder,
        List<SimulationResult> beside,
        List<String> verdict) {
    /** Coverage this far from the nominal is still as promised (common practice, no source). */
    static final double TOLERANCE = 0.02;

    private static final List<Double> STEPS = List.of(1.25, 1.5, 2.0, 3.0, 4.0, 6.0);
    private static final long CRUISES_OF_A_STEP = 4000;
    /** Times as many plots as this are no comparison any more, and take very long (no source). */
    private static final double MOST_TIMES = 100;
    /** Steps that bring costs together. */
    private static final int APPROACHES = 4;

    public SimulationStudy {
        ladder = List.copyOf(ladder);
        beside = List.copyOf(beside);
        verdict = List.copyOf(verdict);
    }

    /**
     * How to try designs.
     *
     * @param cruises cruises of each design, 2 or more
     * @param seed seed of all of them
     * @param rules ways to make confidence limits
     */
    public record Rules(long cruises, long seed, Set<IntervalRule> rules) {
        public Rules {
            rules = Set.copyOf(rules);
        }
    }

    /** A design with the forest on its own strata: the same trees on the same ground for all designs of a study. */
    public record Trial(Design design, Forest forest) {}

    /**
     * Tries designs.
     *
     * @param trials the design in question first, then up to five others
     * @param progress told how far the designs are; steps with more plots come between and are not counted
     * @throws IllegalArgumentException with a sentence for the user if a design cannot be tried
     */
    public static SimulationStudy of(List<Trial> trials, Rules rules, Progress progress) {
        Trial own = trials.get(0);
        Simulator simulator = Simulator.of(own.design(), own.forest(), 1);
        SimulationResult first =
                simulator.run(rules.cruises(), rules.seed(), rules.rules(), share(progress, 0, trials.size()));
        List<LadderStep> ladder = ladder(own, first, rules);
        List<SimulationResult> beside = new ArrayList<>();
        for (int i = 1; i < trials.size(); i++) {
            double scale = scale(trials.get(i), first.cost().hours(), rules.seed());
            beside.add(scaled(trials.get(i), scale)
                    .run(rules.cruises(), rules.seed(), rules.rules(), share(progress, i, trials.size())));
        }
        List<String> verdict = new Verdict(first, ladder, beside).sentences();
        return new SimulationStudy(
                own.forest().name(),
                own.forest().trees().size(),
                own.forest().areaHa(),
                first,
                ladder,
                beside,
                verdict);
    }

    /** The progress of one of several designs as that of all. */
    private static Progress share(Progress progress, int before, int designs) {
        return (work, done, of) -> progress.report(work, before * of + done, designs * of);
    }

    /** A design with other numbers of plots, which may be more than can be laid out. */
    private static Simulator scaled(Trial trial, double scale) {
        try {
            return Simulator.of(trial.design(), trial.forest(), scale);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "as many plots of \"%s\" as take the same time, %.3g times its own, cannot be laid out: %s",
                            trial.design().name(),
                            scale,
                            e.getMessage()),
                    e);
        }
    }

    /** Whether so many times the plots of a design can be laid out. */
    private static boolean canBeScaled(Trial trial, double scale) {
        try {
            Simulator.of(trial.design(), trial.forest(), scale);
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** More plots until the limits of the design hold the truth often enough; not where an error of another kind is in the way. */
    private static List<LadderStep> ladder(Trial trial, SimulationResult first, Rules rules) {
        List<LadderStep> steps = new ArrayList<>();
        if (!Verdict.isTooSeldom(first)
                || Verdict.isBiased(first)
                || trial.design().plot() instanceof PlotDesign.Complete) {
            return steps;
        }
        IntervalRule rule = Verdict.rule(first);
        for (double more : STEPS) {
            if (!canBeScaled(trial, more)) {
                break;
            }
            SimulationResult step = Simulator.of(trial.design(), trial.forest(), more)
                    .run(Math.min(rules.cruises(), CRUISES_OF_A_STEP), rules.seed(), Set.of(rule), Progress.SILENT);
            Coverage coverage = step.target().flatMap(t -> t.coverage(rule)).orElseThrow();
            steps.add(new LadderStep(
                    step.plots() > 0
                            ? step.plots()
                            : (int) Math.round(step.cost().plots()),
                    coverage));
            if (coverage.share() >= first.design().confidence() - TOLERANCE) {
                break;
            }
        }
        return steps;
    }

    /** Times as many plots as make a design take so many hours. */
    private static double scale(Trial trial, double hours, long seed) {
        double scale = 1;
        if (trial.design().plot() instanceof PlotDesign.Complete) {
            return scale;
        }
        for (int i = 0; i < APPROACHES; i++) {
            double now = scaled(trial, scale).cost(seed).hours();
            if (!(now > 0 && hours > 0)) {
                return scale;
            }
            scale *= hours / now;
            if (scale > MOST_TIMES) {
                throw new IllegalArgumentException(
                        "\"" + trial.design().name() + "\" would need more than " + Plain.of(MOST_TIMES, 3)
                                + " times its plots to take as long; compare designs that are nearer in time");
            }
        }
        return scale;
    }

    /** What the forest is, in words. */
    public String words() {
        return String.format(Locale.ROOT, "%s, %,d trees on %s ha", forest, trees, Plain.of(areaHa, 4));
    }
}
