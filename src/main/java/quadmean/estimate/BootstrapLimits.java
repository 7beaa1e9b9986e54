package quadmean.estimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import quadmean.model.IntervalRule;
import quadmean.model.Stratum;
import quadmean.stats.Bootstrap;
import quadmean.stats.BootstrapInterval;
import quadmean.stats.BootstrapNote;
import quadmean.stats.BootstrapSample;
import quadmean.stats.ColumnMeans;
import quadmean.stats.Interval;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.Basis;

/** Bootstrap limits of all rows from the same resamples of plots. */
final class BootstrapLimits {
    /** Numbers held at once: 32 MB of them. Rows beyond are drawn again, from the same seed and so from the same resamples. */
    private static final int MOST_NUMBERS = 4_000_000;

    private static final int MOST_NAMED = 4;

    private final Map<String, Double> weights = new LinkedHashMap<>();
    private final Map<String, Double> areas = new LinkedHashMap<>();
    private final ResampledUnits units;
    private final EstimateSettings settings;
    private final long seed;

    BootstrapLimits(List<Stratum> strata, ResampledUnits units, EstimateSettings settings, long seed) {
        this.units = units;
        this.settings = settings;
        this.seed = seed;
        double area = strata.stream().mapToDouble(Stratum::areaHa).sum();
        weights.put(EstimateRow.ALL, 1.0);
        areas.put(EstimateRow.ALL, area);
        for (Stratum s : strata) {
            weights.put(s.code(), s.areaHa() / area);
            areas.put(s.code(), s.areaHa());
        }
    }

    /** What a row is the mean of, or the ratio of two means; totals and means per area share it. */
    private record Output(String stratum, String species, Part part, Attribute attribute) {
        static Output of(EstimateRow row) {
            return new Output(row.stratum(), row.species(), row.part(), row.attribute());
        }

        boolean isRatio() {
            return attribute == Attribute.QUADRATIC_MEAN_DIAMETER;
        }
    }

    List<EstimateRow> apply(List<EstimateRow> rows, List<String> notes) {
        List<Output> outputs = rows.stream()
                .filter(BootstrapLimits::hasError)
                .map(Output::of)
                .distinct()
                .toList();
        Map<Output, BootstrapInterval> limits = new LinkedHashMap<>();
        int batch = Math.max(1, MOST_NUMBERS / settings.rules().replicates());
        for (int from = 0; from < outputs.size(); from += batch) {
            draw(outputs.subList(from, Math.min(outputs.size(), from + batch)), limits);
        }
        notes.addAll(notes(limits));
        return rows.stream().map(row -> limited(row, limits)).toList();
    }

    private static boolean hasError(EstimateRow row) {
        return Double.isFinite(row.se());
    }

    private EstimateRow limited(EstimateRow row, Map<Output, BootstrapInterval> limits) {
        BootstrapInterval found = limits.get(Output.of(row));
        if (found == null) {
            return RowLimits.with(row, new Interval(Double.NaN, Double.NaN));
        }
        double times = row.basis() == Basis.TOTAL ? areas.getOrDefault(row.stratum(), Double.NaN) : 1;
        Interval i = found.limits();
        EstimateRow with = RowLimits.with(row, new Interval(times * i.lower(), times * i.upper()));
        boolean isFlat =
                found.notes().contains(BootstrapNote.NO_SPREAD) && row.reason().isEmpty();
        return isFlat ? RowLimits.withReason(with, BootstrapNote.NO_SPREAD.sentence()) : with;
    }

    private void draw(List<Output> outputs, Map<Output, BootstrapInterval> limits) {
        List<double[]> columns = new ArrayList<>();
        int[] first = new int[outputs.size()];
        for (int k = 0; k < first.length; k++) {
            Output o = outputs.get(k);
            first[k] = columns.size();
            columns.add(column(o, o.isRatio() ? Attribute.BASAL_AREA : o.attribute()));
            if (o.isRatio()) {
                columns.add(column(o, Attribute.TREES));
            }
        }
        BootstrapSample sample = Bootstrap.run(
                units.strata(),
                ColumnMeans.of(rows(columns), first.length, (means, out) -> {
                    for (int k = 0; k < first.length; k++) {
                        double mean = means[first[k]];
                        out[k] = outputs.get(k).isRatio()
                                ? BasalArea.quadraticMeanDiameter(mean / means[first[k] + 1], 1)
                                : mean;
                    }
                }),
                settings.rules().replicates(),
                seed);
        for (int k = 0; k < first.length; k++) {
            limits.put(
                    outputs.get(k),
                    settings.rules().interval() == IntervalRule.BCA
                            ? sample.bca(k, settings.confidence())
                            : sample.percentile(k, settings.confidence()));
        }
    }

    /** The value of each unit; for a stratum those of its own plots over its share, and 0 elsewhere. */
    private double[] column(Output o, Attribute attribute) {
        ToDoubleFunction<SampledPlot> value = PlotValue.of(
                settings.plot(),
                attribute,
                o.part(),
                stem -> o.species().equals(EstimateRow.ALL) || stem.species().equals(o.species()));
        double weight = weights.getOrDefault(o.stratum(), Double.NaN);
        return units.units().stream()
                .mapToDouble(
                        p -> o.stratum().equals(EstimateRow.ALL) || o.stratum().equals(p.stratum())
                                ? value.applyAsDouble(p) / weight
                                : 0)
                .toArray();
    }

    private double[][] rows(List<double[]> columns) {
        double[][] rows = new double[units.units().size()][columns.size()];
        for (int i = 0; i < rows.length; i++) {
            for (int c = 0; c < rows[i].length; c++) {
                rows[i][c] = columns.get(c)[i];
            }
        }
        return rows;
    }

    private List<String> notes(Map<Output, BootstrapInterval> limits) {
        List<String> notes = new ArrayList<>();
        notes.add(String.format(
                Locale.ROOT,
                "Limits are %s from %d resamples of the plots%s, seed %d.",
                settings.rules().interval().label(),
                settings.rules().replicates(),
                units.strata().size() > 1 ? " within their strata, one fewer than the stratum has" : "",
                seed));
        Map<BootstrapNote, List<String>> rows = new EnumMap<>(BootstrapNote.class);
        limits.forEach((o, i) -> i.notes()
                .forEach(n -> rows.computeIfAbsent(n, k -> new ArrayList<>()).add(name(o))));
        rows.forEach((note, names) -> notes.add("Bootstrap: " + note.sentence() + of(names, limits.size()) + "."));
        return notes;
    }

    private static String of(List<String> names, int all) {
        if (names.size() == all) {
            return "";
        }
        int more = names.size() - MOST_NAMED;
        return " (" + String.join(", ", names.subList(0, Math.min(MOST_NAMED, names.size())))
                + (more > 0 ? " and " + more + " more" : "") + ")";
    }

    private static String name(Output o) {
        String where = o.stratum().equals(EstimateRow.ALL) ? "" : " in " + o.stratum();
        String whose = o.species().equals(EstimateRow.ALL) ? "" : " of " + o.species();
        return o.attribute().label() + whose + where;
    }
}
