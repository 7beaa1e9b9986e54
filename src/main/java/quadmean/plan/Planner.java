package quadmean.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import quadmean.design.Design;
import quadmean.design.PlanSettings.Sharing;
import quadmean.model.FinitePopulation;
import quadmean.plan.PilotEffect.Limit;
import quadmean.stats.Allocation;
import quadmean.stats.Assurance;
import quadmean.stats.PlannedSample;
import quadmean.stats.SampleSearch;

/** Works out how many plots the targets of a design take. */
public final class Planner {
    private final Design design;
    private final List<TargetOutlook> targets;
    private final List<SampleForm> forms;

    private Planner(Design design, List<TargetOutlook> targets) {
        this.design = design;
        this.targets = targets;
        this.forms = new SampleForms(design).forms(targets.get(0));
    }

    /**
     * Plans for the target of the cruise alone.
     *
     * @param variation where the expectation comes from, in words
     * @param outlook expectations, one for each stratum of the design
     */
    public static CruisePlan plan(Design design, String variation, List<StratumOutlook> outlook) {
        PlanTarget target = new PlanTarget(design.targetAttribute(), design.targetErrorPercent(), design.confidence());
        return planAll(design, variation, List.of(new TargetOutlook(target, outlook)));
    }

    /**
     * Plans for several targets at once: the sample reaches each of them.
     *
     * @param variation where the expectations come from, in words
     * @param targets targets with what is expected of each stratum of the design, that of the cruise first; at least one
     */
    public static CruisePlan planAll(Design design, String variation, List<TargetOutlook> targets) {
        return new Planner(design, targets).plan(variation);
    }

    private CruisePlan plan(String variation) {
        List<PlanOption> options = forms.stream()
                .map(f -> OptionMaker.option(f, targets, design.plan().costs().budget()))
                .toList();
        return new CruisePlan(
                variation,
                targets,
                design.plan().finitePopulation(),
                design.plan().costs(),
                options,
                laidOut(options),
                pilot(),
                notes(options));
    }

    private Optional<PlanOption> laidOut(List<PlanOption> options) {
        boolean clusters = design.layout().map(l -> l.cluster().isPresent()).orElse(false);
        String name = Allocation.valueOf(sharing().name()).label();
        return options.stream()
                .filter(o -> switch (o.kind()) {
                    case CLUSTER -> clusters && targets.get(0).strata().size() == 1;
                    case SIMPLE ->
                        !clusters || design.plan().samples().cluster().isEmpty();
                    case STRATIFIED -> o.name().equals(name);
                    default -> false;
                })
                .filter(PlanOption::isReachable)
                .findFirst();
    }

    private Sharing sharing() {
        return design.plan().sharing();
    }

    private Optional<PilotEffect> pilot() {
        TargetOutlook first = targets.get(0);
        double df = first.pilotDf();
        if (!Double.isFinite(df) || forms.isEmpty()) {
            return Optional.empty();
        }
        SampleForm form = forms.get(0);
        List<Limit> limits = DoubleStream.of(0.8, 0.9)
                .mapToObj(level -> limit(form, first, level, Assurance.spreadLimit(df, level)))
                .toList();
        return Optional.of(new PilotEffect(df, first.cvPercent(), limits));
    }

    private static Limit limit(SampleForm form, TargetOutlook first, double level, double factor) {
        TargetOutlook wider = first.spread(factor);
        PlannedSample sample = form.sample().apply(wider);
        OptionalInt n = SampleSearch.smallest(sample, first.target().goal());
        return new Limit(
                level,
                wider.cvPercent(),
                n.isPresent() ? OptionalInt.of(form.kind().plots(sample.parts(n.getAsInt()))) : OptionalInt.empty());
    }

    private List<String> notes(List<PlanOption> options) {
        List<String> notes = new ArrayList<>();
        boolean known = targets.stream().noneMatch(t -> Double.isFinite(t.pilotDf()));
        notes.add("A cruise of this many plots reaches the target a little more than half the time, for the variation"
                + " found will differ from the variation expected"
                + (known ? "." : "; as uncertain as the pilot leaves that variation, about half the time."));
        if (design.selection().isSystematic()) {
            notes.add("The number is that of a random sample; a grid usually does somewhat better.");
        }
        overfull(options).ifPresent(notes::add);
        boolean clusters = design.layout().map(l -> l.cluster().isPresent()).orElse(false);
        if (clusters
                && (design.plan().samples().cluster().isEmpty()
                        || design.strata().size() > 1)) {
            notes.add(
                    "The layout has clusters, and the number was worked out for single plots. Plots of a cluster are alike, so"
                            + " that the target may take more of them. [plan.cluster] plans clusters in a stand without strata;"
                            + " [layout] plots sets the number.");
        }
        if (targets.size() > 1) {
            notes.add("Each target is reached by the plots given; the chance is that of each by itself, not of all"
                    + " together.");
        }
        return notes;
    }

    /** Said where the plots together are larger than the tract. */
    private Optional<String> overfull(List<PlanOption> options) {
        double room =
                FinitePopulation.CORRECT.plotsIn(design.plot(), targets.get(0).areaHa());
        boolean more = options.stream()
                .filter(o -> o.kind() == SampleKind.SIMPLE || o.kind() == SampleKind.STRATIFIED)
                .filter(PlanOption::isReachable)
                .anyMatch(o -> o.total() > Math.ceil(room));
        return more
                ? Optional.of("So many plots cover more ground than the tract has, and would overlap: with"
                        + " finite_population = \"correct\" in [plan] the number stays within the plots that tile it; or"
                        + " allow a larger error.")
                : Optional.empty();
    }
}
