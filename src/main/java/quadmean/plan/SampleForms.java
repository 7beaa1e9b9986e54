package quadmean.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import quadmean.design.Design;
import quadmean.design.PlanCosts;
import quadmean.design.StratumEntry;
import quadmean.model.DegreesRule;
import quadmean.plan.SampleForm.Scope;
import quadmean.stats.Allocation;
import quadmean.stats.Allocation.PlannedStratum;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.PlannedSample;
import quadmean.stats.SimplePlan;
import quadmean.stats.StratifiedPlan;

/** The ways to sample that a design lets a plan compare. */
final class SampleForms {
    private final Design design;
    private final PlanCosts costs;

    SampleForms(Design design) {
        this.design = design;
        this.costs = design.plan().costs();
    }

    /** Plots first, then what the design names beside them. */
    List<SampleForm> forms(TargetOutlook first) {
        List<SampleForm> forms = new ArrayList<>();
        if (design.strata().size() == 1) {
            forms.add(simple());
        } else {
            boolean dear = design.strata().stream().anyMatch(s -> s.plotCost().isPresent());
            Arrays.stream(Allocation.values())
                    .filter(a -> a != Allocation.OPTIMUM || dear)
                    .forEach(a -> forms.add(stratified(a)));
        }
        forms.addAll(new FurtherForms(design).forms(first));
        return forms;
    }

    private SampleForm simple() {
        return new SampleForm(
                SampleKind.SIMPLE,
                design.selection().isSystematic() ? "grid, taken as a random sample" : "simple random",
                List.of("plots"),
                costs.fixed(),
                new double[] {costs.perPlot()},
                Scope.ALL_TARGETS,
                this::simple,
                List.of(),
                SampleForm::none);
    }

    private PlannedSample simple(TargetOutlook outlook) {
        return new SimplePlan(outlook.cvPercent(), population(outlook.areaHa()));
    }

    private SampleForm stratified(Allocation allocation) {
        return new SampleForm(
                SampleKind.STRATIFIED,
                allocation.label(),
                design.stratumList().stream().map(s -> s.code()).toList(),
                costs.fixed(),
                design.strata().stream().mapToDouble(this::cost).toArray(),
                Scope.ALL_TARGETS,
                outlook -> new StratifiedPlan(allocation, planned(outlook), rule()),
                List.of(),
                SampleForm::none);
    }

    private DegreesOfFreedom rule() {
        return design.degreesRule() == DegreesRule.SATTERTHWAITE
                ? DegreesOfFreedom.SATTERTHWAITE
                : DegreesOfFreedom.UNITS_MINUS_STRATA;
    }

    private List<PlannedStratum> planned(TargetOutlook outlook) {
        List<PlannedStratum> planned = new ArrayList<>();
        for (int h = 0; h < outlook.strata().size(); h++) {
            StratumOutlook s = outlook.strata().get(h);
            StratumEntry entry = design.strata().get(h);
            planned.add(new PlannedStratum(
                    s.areaHa() / outlook.areaHa(),
                    population(s.areaHa()),
                    s.mean(),
                    s.mean() * s.cvPercent() / 100,
                    entry.fewestPlots(),
                    cost(entry)));
        }
        return planned;
    }

    private double cost(StratumEntry entry) {
        return entry.plotCost().orElse(costs.perPlot());
    }

    private double population(double areaHa) {
        return design.plan().finitePopulation().plotsIn(design.plot(), areaHa);
    }
}
