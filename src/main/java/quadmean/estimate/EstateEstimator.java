package quadmean.estimate;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quadmean.estimate.EstateEstimate.Extent;
import quadmean.estimate.EstateEstimate.StratumExtent;
import quadmean.model.EstateOnePlot;
import quadmean.model.EstateStand;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.Basis;

/**
 * Estimates an estate: each stand a simple random sample of its own, strata and the whole as sums over stands weighted by area, as a
 * stratified sample is whose strata are the stands (Cochran 1977, chapter 5, from memory).
 */
public final class EstateEstimator {
    private final List<EstateStand> stands;
    private final EstateSample sample;
    private final EstimateSettings settings;

    /**
     * An estimator.
     *
     * @param stands the stands
     * @param sums for each stand its sums, null without plots
     * @param onePlot what becomes of stands with a single plot
     */
    public EstateEstimator(
            List<EstateStand> stands,
            List<@Nullable StandSums> sums,
            EstimateSettings settings,
            EstateOnePlot onePlot) {
        this.stands = List.copyOf(stands);
        this.settings = settings;
        this.sample = new EstateSample(this.stands, new ArrayList<>(sums), settings, onePlot);
    }

    /** Number of stands, those without plots too. */
    public int size() {
        return stands.size();
    }

    /** A stand. */
    public EstateStand stand(int i) {
        return stands.get(i);
    }

    /** Number of plots of a stand. */
    public int plots(int i) {
        return sample.plots(i);
    }

    /** The species found in a stand, by code. */
    public List<String> speciesOf(int i) {
        StandSums sums = sample.sums(i);
        return sums == null ? List.of() : sums.species();
    }

    /**
     * The rows of a stand that has plots: each attribute per hectare and in total, then the quadratic mean diameter.
     *
     * @param species a species, or {@link EstimateRow#ALL}
     */
    public List<EstimateRow> rows(int i, String species) {
        EstateGroup alone = new EstateGroup(sample, List.of(i), species);
        return rows(stands.get(i).code(), species, new EstateUnion(alone, sample.rule()));
    }

    /**
     * Mean per hectare of an attribute in a stand that has plots, with its error by Student's t.
     *
     * @param species a species, or {@link EstimateRow#ALL}
     * @param attribute one that the estate estimates
     */
    public MeanEstimate perHectare(int i, String species, Attribute attribute) {
        return new EstateGroup(sample, List.of(i), species)
                .mean(settings.attributes().indexOf(attribute));
    }

    /** The estate as a whole, and its strata. */
    public EstateEstimate estate() {
        Map<String, List<Integer>> strata = new TreeMap<>();
        TreeSet<String> found = new TreeSet<>();
        for (int i = 0; i < stands.size(); i++) {
            strata.computeIfAbsent(stands.get(i).stratum(), k -> new ArrayList<>())
                    .add(i);
            sample.addSpecies(i, found);
        }
        Map<String, List<Integer>> sampled = new TreeMap<>();
        strata.forEach((code, members) ->
                sampled.put(code, members.stream().filter(i -> plots(i) > 0).toList()));
        sampled.values().removeIf(List::isEmpty);
        List<String> species = new ArrayList<>(List.of(EstimateRow.ALL));
        species.addAll(found);
        List<List<EstimateRow>> bySpecies =
                species.parallelStream().map(s -> rows(sampled, s)).toList();
        List<StratumExtent> extents = new ArrayList<>();
        if (strata.size() > 1) {
            strata.forEach((code, members) -> extents.add(new StratumExtent(code, extent(members))));
        }
        Extent whole = extent(IntStream.range(0, stands.size()).boxed().toList());
        return new EstateEstimate(
                settings.confidence(), inOrder(sampled.keySet(), bySpecies), whole, extents, notes(whole));
    }

    /** The whole first, then the strata; in each of them all species, then one by one. */
    private static List<EstimateRow> inOrder(Set<String> strata, List<List<EstimateRow>> bySpecies) {
        List<String> codes = new ArrayList<>(List.of(EstimateRow.ALL));
        codes.addAll(strata.size() > 1 ? strata : Set.of());
        return codes.stream()
                .flatMap(code -> bySpecies.stream()
                        .flatMap(List::stream)
                        .filter(r -> r.stratum().equals(code)))
                .toList();
    }

    /** Rows of a species, of the whole and of each stratum. */
    private List<EstimateRow> rows(Map<String, List<Integer>> strata, String species) {
        List<EstateGroup> groups = new ArrayList<>();
        strata.values().forEach(members -> groups.add(new EstateGroup(sample, members, species)));
        List<EstimateRow> rows =
                new ArrayList<>(rows(EstimateRow.ALL, species, new EstateUnion(groups, sample.rule())));
        Iterator<EstateGroup> group = groups.iterator();
        strata.keySet().forEach(code -> rows.addAll(rows(code, species, new EstateUnion(group.next(), sample.rule()))));
        return rows;
    }

    private List<EstimateRow> rows(String code, String species, EstateUnion union) {
        List<Attribute> attributes = settings.attributes();
        boolean isOnFewPlots = union.isOnFewPlots();
        List<EstimateRow> rows = new ArrayList<>();
        for (int a = 0; a < attributes.size(); a++) {
            MeanEstimate mean = union.mean(a);
            rows.add(row(code, species, attributes.get(a), Basis.PER_AREA, mean, isOnFewPlots));
            rows.add(row(code, species, attributes.get(a), Basis.TOTAL, mean.times(union.areaHa()), isOnFewPlots));
        }
        MeanEstimate diameter = diameter(union.ratio(), isOnFewPlots);
        rows.add(row(code, species, Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO, diameter, isOnFewPlots));
        return rows;
    }

    /** √(G/(k·N)), its error from that of the ratio G/N: the relative error of a square root is half as large. */
    private static MeanEstimate diameter(MeanEstimate ratio, boolean isOnFewPlots) {
        double qmd = BasalArea.quadraticMeanDiameter(ratio.mean(), 1);
        double half = qmd / (2 * ratio.mean());
        return isOnFewPlots
                ? new MeanEstimate(ratio.n(), 0, qmd, Double.NaN, Double.NaN)
                : new MeanEstimate(ratio.n(), ratio.df(), qmd, half * ratio.se(), half * ratio.sd());
    }

    private EstimateRow row(
            String code, String species, Attribute attribute, Basis basis, MeanEstimate e, boolean isOnFewPlots) {
        return EstimateRow.of(
                code,
                species,
                Part.ALL,
                attribute,
                basis,
                e,
                settings.confidence(),
                reason(attribute, e, isOnFewPlots));
    }

    private String reason(Attribute attribute, MeanEstimate e, boolean isOnFewPlots) {
        if (Double.isNaN(e.mean())) {
            String why = settings.whyMissing(attribute);
            return why.isEmpty() ? "no trees tallied here" : why;
        }
        if (!e.hasError()) {
            boolean isOfDiameter = attribute == Attribute.QUADRATIC_MEAN_DIAMETER && isOnFewPlots;
            return "no standard error: "
                    + (isOfDiameter
                            ? RowMaker.ON_FEW_PLOTS
                            : e.n() == 1 ? "a single plot" : "a stand with a single plot");
        }
        return e.mean() == 0 ? RowMaker.nothing(attribute) : "";
    }

    private double area(List<Integer> members) {
        return members.stream().mapToDouble(i -> stands.get(i).areaHa()).sum();
    }

    private Extent extent(List<Integer> members) {
        List<Integer> sampled = members.stream().filter(i -> plots(i) > 0).toList();
        List<Integer> without = members.stream().filter(i -> plots(i) == 0).toList();
        return new Extent(
                sampled.size(),
                area(sampled),
                sampled.stream().mapToLong(this::plots).sum(),
                (int) sampled.stream().filter(i -> plots(i) == 1).count(),
                without.size(),
                area(without));
    }

    private List<String> notes(Extent whole) {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Each stand is taken as a simple random sample of its plots, strata and the estate as sums over stands; limits are"
                        + " by Student's t. Sampling errors do not hold the errors of height curves and of equations.");
        if (whole.withoutPlots() > 0) {
            notes.add(whole.withoutPlots() + " of " + stands.size() + (stands.size() == 1 ? " stand" : " stands")
                    + (whole.withoutPlots() == 1 ? " has" : " have") + " no plots: no total holds "
                    + (whole.withoutPlots() == 1 ? "its" : "their") + " area.");
        }
        if (whole.onePlot() > 0) {
            notes.add(sample.onePlotNote(whole.onePlot()));
        }
        return notes;
    }
}
