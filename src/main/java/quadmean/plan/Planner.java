package quadmean.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.stats.Allocation;
import quadmean.stats.Allocation.PlannedStratum;
import quadmean.stats.SampleSize;

/** Works out how many plots the target of a design takes. */
public final class Planner {
    private final Design design;
    private final double totalHa;

    private Planner(Design design) {
        this.design = design;
        this.totalHa = design.areaHa();
    }

    /**
     * Plans from what is expected of each stratum; with one stratum, for a simple random sample.
     *
     * @param variation where the expectation comes from, in words
     * @param outlook expectations, one for each stratum of the design
     */
    public static CruisePlan plan(Design design, String variation, List<StratumOutlook> outlook) {
        Planner planner = new Planner(design);
        return new CruisePlan(
                variation,
                outlook,
                design.targetErrorPercent(),
                design.confidence(),
                design.plan().finitePopulation(),
                outlook.size() == 1
                        ? List.of(planner.simpleRandom(outlook.get(0)))
                        : Arrays.stream(Allocation.values())
                                .map(a -> planner.stratified(a, outlook))
                                .toList(),
                planner.notes());
    }

    private PlanOption simpleRandom(StratumOutlook only) {
        List<PlannedStratum> planned = planned(List.of(only));
        double population = planned.get(0).populationUnits();
        OptionalInt n = population < 2
                ? OptionalInt.empty()
                : SampleSize.simpleRandom(
                        only.cvPercent(), design.targetErrorPercent(), design.confidence(), population);
        int[] units = n.isPresent() ? new int[] {n.getAsInt()} : null;
        return option("simple random", units, planned);
    }

    private PlanOption stratified(Allocation allocation, List<StratumOutlook> outlook) {
        List<PlannedStratum> planned = planned(outlook);
        int[] units = allocation.smallest(design.targetErrorPercent(), design.confidence(), planned);
        return option(allocation.label(), units, planned);
    }

    private PlanOption option(String name, int @Nullable [] units, List<PlannedStratum> planned) {
        if (units == null) {
            return new PlanOption(name, List.of(), Double.NaN);
        }
        return new PlanOption(
                name,
                Arrays.stream(units).boxed().toList(),
                Allocation.errorPercent(units, design.confidence(), planned));
    }

    private List<PlannedStratum> planned(List<StratumOutlook> outlook) {
        return outlook.stream()
                .map(s -> new PlannedStratum(
                        s.areaHa() / totalHa,
                        design.plan().finitePopulation().plotsIn(design.plot(), s.areaHa()),
                        s.mean(),
                        s.mean() * s.cvPercent() / 100))
                .toList();
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("A cruise of this many plots reaches the target a little more than half the time, for the variation"
                + " found will differ from the variation expected.");
        if (design.selection().isSystematic()) {
            notes.add("The number is that of a random sample; a grid usually does somewhat better.");
        }
        return notes;
    }
}
