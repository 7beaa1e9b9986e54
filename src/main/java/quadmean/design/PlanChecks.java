package quadmean.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import quadmean.design.PlanSamples.Clusters;
import quadmean.design.PlanSettings.Sharing;
import quadmean.design.PlanSettings.TargetEntry;
import quadmean.model.Rule;

/** What a plan asks of the strata and of the cruise's target. */
final class PlanChecks {
    private final Section plan;
    private final Design design;
    private final boolean strata;

    private PlanChecks(Section plan, Design design) {
        this.plan = plan;
        this.design = design;
        this.strata = design.strata().size() > 1;
    }

    static void check(Section root, Design design) {
        new PlanChecks(root.table("plan"), design).check();
    }

    private void check() {
        PlanSettings settings = design.plan();
        if (strata && settings.cvPercent().isPresent()) {
            perStratum("cv", "one cv does not serve several strata");
        }
        if (strata && settings.range().isPresent()) {
            perStratum("range", "one range does not serve several strata");
        }
        if (settings.sharing() == Sharing.OPTIMUM && !hasCosts()) {
            plan.problem(
                    Rule.DESIGN_VALUE,
                    "allocation",
                    "optimum",
                    "an optimum with costs needs them: give strata plot_cost, or write \"neyman\"");
        }
        int fewest = 2 * design.strata().size();
        if (strata && settings.pilotPlots().orElse(fewest) < fewest) {
            plan.problem(
                    Rule.DESIGN_VALUE,
                    "pilot_plots",
                    Integer.toString(settings.pilotPlots().orElse(0)),
                    "a variation is seen on two plots or more of each stratum, " + fewest
                            + " over all; leave pilot_plots out to take the variation as known");
        }
        settings.targets().forEach(this::check);
        checkClusters(settings);
        checkTotals();
    }

    /** Clusters are planned as they are laid out. */
    private void checkClusters(PlanSettings settings) {
        OptionalInt planned = settings.samples().cluster().map(Clusters::plots).orElse(OptionalInt.empty());
        Optional<Integer> laid =
                design.layout().flatMap(LayoutSettings::cluster).map(LayoutSettings.Cluster::plots);
        if (planned.isPresent() && laid.isPresent() && planned.getAsInt() != laid.get()) {
            plan.problem(
                    Rule.DESIGN_VALUE,
                    "cluster",
                    Integer.toString(planned.getAsInt()),
                    "the plan has clusters of " + planned.getAsInt() + " plots and [layout] of " + laid.get()
                            + "; leave plots out of [plan.cluster] to plan those of the layout");
        }
    }

    private boolean hasCosts() {
        return design.strata().stream().anyMatch(s -> s.plotCost().isPresent());
    }

    private void perStratum(String key, String what) {
        plan.problem(
                Rule.DESIGN_VALUE, key, "", what + "; give each expected_mean and expected_cv, or pilot = \"tally\"");
    }

    private void check(TargetEntry target) {
        String id = target.attribute().id();
        if (target.attribute() == design.targetAttribute()) {
            plan.problem(
                    Rule.DESIGN_VALUE,
                    "target",
                    id,
                    "[cruise] has the target of this attribute already; [[plan.target]] is for further ones");
        }
        TreeSet<String> unknown = new TreeSet<>(target.means().keySet());
        unknown.addAll(target.cvs().keySet());
        List<String> codes = design.stratumList().stream().map(s -> s.code()).toList();
        codes.forEach(unknown::remove);
        if (!unknown.isEmpty()) {
            plan.problem(
                    Rule.DESIGN_VALUE,
                    "target",
                    String.join(", ", unknown),
                    "the target of " + id + " names strata that the design does not have; it has "
                            + String.join(", ", codes));
        }
        if (strata && target.cvPercent().isPresent()) {
            plan.problem(
                    Rule.DESIGN_VALUE,
                    "target",
                    id,
                    "one cv does not serve several strata; give the target stratum_mean and stratum_cv");
        }
    }

    /** Minima that no stratum has room for are never met. */
    private void checkTotals() {
        for (StratumEntry s : design.strata()) {
            double room = design.plan()
                    .finitePopulation()
                    .plotsIn(design.plot(), s.stratum().areaHa());
            if (s.fewestPlots() > StratumEntry.FEWEST && s.fewestPlots() > room) {
                plan.problem(
                        Rule.DESIGN_VALUE,
                        "finite_population",
                        Integer.toString(s.fewestPlots()),
                        "stratum " + s.stratum().code() + " has room for fewer plots than its fewest_plots");
            }
        }
    }
}
