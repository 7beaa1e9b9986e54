package quadmean.estimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import quadmean.model.FinitePopulation;
import quadmean.model.IntervalRule;
import quadmean.model.PlotDesign;
import quadmean.model.Stratum;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** Design-based estimates of a stand from its plots. */
public final class StandEstimator {
    private final List<Stratum> strata;
    private final List<SampledPlot> plots;
    private final EstimateSettings settings;
    private final Sample whole;

    private StandEstimator(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings) {
        this.strata = strata;
        this.plots = plots;
        this.settings = settings;
        this.whole = Sample.of(strata, plots, settings);
    }

    /**
     * Estimates everything.
     *
     * @param strata strata of the design
     * @param plots plots in the order in which they came in; each stratum must have one
     * @throws IllegalArgumentException if a stratum has no plot
     */
    public static StandEstimate estimate(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings) {
        return estimate(strata, plots, settings, 1);
    }

    /**
     * Estimates everything.
     *
     * @param strata strata of the design
     * @param plots plots in the order in which they came in; each stratum must have one
     * @param seed seed of the resamples of a bootstrap
     * @throws IllegalArgumentException if a stratum has no plot
     */
    public static StandEstimate estimate(
            List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings, long seed) {
        StandEstimator estimator = new StandEstimator(strata, plots, settings);
        List<String> notes = new ArrayList<>(estimator.notes());
        List<EstimateRow> rows = RowLimits.apply(estimator.rows(), strata, plots, settings, seed, notes);
        return new StandEstimate(
                settings.confidence(),
                rows,
                RunningEstimate.of(strata, plots, settings),
                StructureMaker.structure(strata, plots, settings),
                estimator.needed(rows),
                notes,
                OtherVariance.of(strata, plots, settings),
                OtherEstimate.of(estimator.whole, settings));
    }

    /**
     * The rows of the whole stand, all species together, and nothing else: for work that estimates again and again.
     *
     * @param rules ways to make confidence limits
     * @return rows by way, in the order of the attributes
     */
    public static Map<IntervalRule, List<EstimateRow>> wholeStand(
            List<Stratum> strata,
            List<SampledPlot> plots,
            EstimateSettings settings,
            long seed,
            Set<IntervalRule> rules) {
        Sample whole = Sample.of(strata, plots, settings);
        List<EstimateRow> rows = new RowMaker(whole, settings, EstimateRow.ALL).rows(EstimateRow.ALL);
        Map<IntervalRule, List<EstimateRow>> limited = new EnumMap<>(IntervalRule.class);
        for (IntervalRule rule : rules) {
            limited.put(rule, RowLimits.apply(rows, strata, plots, settings.with(rule), seed, new ArrayList<>()));
        }
        return limited;
    }

    private List<EstimateRow> rows() {
        List<String> species = new ArrayList<>(List.of(EstimateRow.ALL));
        species.addAll(new TreeSet<>(plots.stream()
                .flatMap(p -> p.stems().stream())
                .map(Stem::species)
                .toList()));
        List<EstimateRow> rows = new ArrayList<>();
        rows.addAll(rows(whole, EstimateRow.ALL, species));
        if (strata.size() > 1) {
            for (Stratum stratum : strata) {
                rows.addAll(rows(Sample.of(List.of(stratum), plots, settings), stratum.code(), species));
            }
        }
        return rows;
    }

    /** Whole trees first, then what their logs are; a species without a log of a kind has no row for it. */
    private List<EstimateRow> rows(Sample sample, String stratum, List<String> species) {
        RowMaker maker = new RowMaker(sample, settings, stratum);
        List<EstimateRow> rows = new ArrayList<>();
        species.forEach(s -> rows.addAll(maker.rows(s)));
        for (Part part : parts()) {
            species.stream().filter(s -> occurs(s, part)).forEach(s -> rows.addAll(maker.rows(s, part)));
        }
        return rows;
    }

    /** Each product of the design, then each place in the stem that occurs. */
    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        settings.products().forEach(p -> parts.add(Part.ofProduct(p)));
        int longest = plots.stream()
                .flatMap(p -> p.stems().stream())
                .mapToInt(s -> s.wood().logs().size())
                .max()
                .orElse(0);
        for (int i = 1; i <= longest; i++) {
            parts.add(Part.ofLog(i));
        }
        return parts;
    }

    private boolean occurs(String species, Part part) {
        return species.equals(EstimateRow.ALL)
                || plots.stream()
                        .flatMap(p -> p.stems().stream())
                        .filter(s -> s.species().equals(species))
                        .anyMatch(s -> s.wood().logs().stream().anyMatch(part::holds));
    }

    private List<PlotsNeeded> needed(List<EstimateRow> rows) {
        List<Attribute> order = new ArrayList<>(List.of(settings.target()));
        List.of(
                        Attribute.NET_BOARD_FEET,
                        Attribute.NET_LOG_VOLUME,
                        Attribute.VOLUME,
                        Attribute.BASAL_AREA,
                        Attribute.TREES)
                .stream()
                .filter(a -> a != settings.target() && settings.attributes().contains(a))
                .forEach(order::add);
        return order.stream().map(a -> needed(a, rows)).toList();
    }

    private PlotsNeeded needed(Attribute attribute, List<EstimateRow> rows) {
        Optional<EstimateRow> row = rows.stream()
                .filter(r -> r.stratum().equals(EstimateRow.ALL)
                        && r.species().equals(EstimateRow.ALL)
                        && r.part().equals(Part.ALL)
                        && r.attribute() == attribute
                        && r.basis() == Basis.PER_AREA)
                .findFirst();
        double achieved = row.map(EstimateRow::samplingErrorPercent).orElse(Double.NaN);
        return new PlotsAhead(whole, strata, plots.size(), settings).of(attribute, achieved);
    }

    /** For normal values the standard error of a standard deviation is 1/√(2·df) of it, to the first order. */
    private String fewPlots() {
        int df = plots.size() - strata.size();
        return "With " + plots.size() + " plots little is known"
                + (df > 0
                        ? String.format(
                                Locale.ROOT,
                                ": the standard error itself may be off by %.0f %% (one standard deviation, 1/√(2·df), for"
                                        + " plots that vary normally), and so may the limits.",
                                100 / Math.sqrt(2.0 * df))
                        : ": there is no standard error.");
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>(whole.notes());
        if (plots.size() < 10 && !(settings.plot() instanceof PlotDesign.Complete)) {
            notes.add(fewPlots());
        }
        if (settings.finitePopulation() == FinitePopulation.CORRECT) {
            notes.add(
                    "Standard errors carry the finite population correction, which holds where plots tile the tract.");
        }
        return notes;
    }
}
