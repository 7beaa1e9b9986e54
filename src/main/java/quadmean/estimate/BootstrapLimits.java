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

    private final Map<String, Resampling> resamplings = new LinkedHashMap<>();
    private final Map<String, Double> areas = new LinkedHashMap<>();
    private final EstimateSettings settings;
    private final String whyNot;
    private final long seed;

    /** Resamples the whole stand and each of its strata, each as a sample of its own. */
    BootstrapLimits(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings, long seed) {
        this.settings = settings;
        this.seed = seed;
        this.whyNot = add(EstimateRow.ALL, Sample.of(strata, plots, settings));
        for (Stratum s : strata) {
            add(s.code(), Sample.of(List.of(s), plots, settings));
        }
    }

    private String add(String stratum, Sample sample) {
        areas.put(stratum, sample.areaHa());
        sample.resampling().ifPresent(r -> resamplings.put(stratum, r));
        return sample.whyNoBootstrap();
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
                .filter(row -> resamplings.containsKey(row.stratum()))
                .map(Output::of)
                .distinct()
                .toList();
        Map<Output, BootstrapInterval> limits = new LinkedHashMap<>();
        int batch = Math.max(1, MOST_NUMBERS / settings.rules().replicates());
        resamplings.forEach((stratum, resampling) -> {
            List<Output> own =
                    outputs.stream().filter(o -> o.stratum().equals(stratum)).toList();
            for (int from = 0; from < own.size(); from += batch) {
                draw(resampling, own.subList(from, Math.min(own.size(), from + batch)), limits);
            }
        });
        notes.addAll(notes(limits));
        return rows.stream().map(row -> limited(row, limits)).toList();
    }

    private static boolean hasError(EstimateRow row) {
        return Double.isFinite(row.se());
    }

    private EstimateRow limited(EstimateRow row, Map<Output, BootstrapInterval> limits) {
        BootstrapInterval found = limits.get(Output.of(row));
        if (found == null) {
            EstimateRow bare = RowLimits.with(row, new Interval(Double.NaN, Double.NaN));
            boolean isSilent = row.reason().isEmpty() && !resamplings.containsKey(row.stratum());
            return isSilent ? RowLimits.withReason(bare, whyNot) : bare;
        }
        double times = row.basis() == Basis.TOTAL ? areas.getOrDefault(row.stratum(), Double.NaN) : 1;
        Interval i = found.limits();
        EstimateRow with = RowLimits.with(row, new Interval(times * i.lower(), times * i.upper()));
        return row.reason().isEmpty() ? RowLimits.withReason(with, noLimits(found)) : with;
    }

    private static String noLimits(BootstrapInterval found) {
        return found.notes().stream()
                .filter(n -> n == BootstrapNote.NO_SPREAD || n == BootstrapNote.NO_ACCELERATION)
                .map(BootstrapNote::sentence)
                .findFirst()
                .orElse("");
    }

    private void draw(Resampling resampling, List<Output> outputs, Map<Output, BootstrapInterval> limits) {
        List<double[]> columns = new ArrayList<>();
        int[] first = new int[outputs.size()];
        for (int k = 0; k < first.length; k++) {
            Output o = outputs.get(k);
            first[k] = columns.size();
            columns.add(column(resampling, o, o.isRatio() ? Attribute.BASAL_AREA : o.attribute()));
            if (o.isRatio()) {
                columns.add(column(resampling, o, Attribute.TREES));
            }
        }
        ColumnMeans statistic = ColumnMeans.of(rows(columns), first.length, (means, out) -> {
            for (int k = 0; k < first.length; k++) {
                double mean = means[first[k]];
                out[k] = outputs.get(k).isRatio()
                        ? BasalArea.quadraticMeanDiameter(mean / means[first[k] + 1], 1)
                        : mean;
            }
        });
        BootstrapSample sample = Bootstrap.run(
                resampling.strata(),
                resampling.weights().of(statistic),
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

    private double[] column(Resampling resampling, Output o, Attribute attribute) {
        ToDoubleFunction<SampledPlot> value = PlotValue.of(
                settings.plot(),
                attribute,
                o.part(),
                stem -> o.species().equals(EstimateRow.ALL) || stem.species().equals(o.species()));
        return resampling.plots().stream().mapToDouble(value).toArray();
    }

    private static double[][] rows(List<double[]> columns) {
        double[][] rows = new double[columns.get(0).length][columns.size()];
        for (int i = 0; i < rows.length; i++) {
            for (int c = 0; c < rows[i].length; c++) {
                rows[i][c] = columns.get(c)[i];
            }
        }
        return rows;
    }

    private List<String> notes(Map<Output, BootstrapInterval> limits) {
        Resampling whole = resamplings.get(EstimateRow.ALL);
        if (whole == null) {
            return List.of("No bootstrap limits for the whole stand: see the reasons of the rows.");
        }
        List<String> notes = new ArrayList<>();
        notes.add(String.format(
                Locale.ROOT,
                "Limits are %s from %d resamples of the %s%s, seed %d.",
                settings.rules().interval().label(),
                settings.rules().replicates(),
                whole.unit(),
                whole.strata().size() > 1 ? " within their strata, one fewer than the stratum has" : "",
                seed));
        notes.addAll(whole.notes());
        Map<BootstrapNote, List<String>> rows = new EnumMap<>(BootstrapNote.class);
        limits.forEach((o, i) -> i.notes()
                .forEach(n -> rows.computeIfAbsent(n, k -> new ArrayList<>()).add(name(o))));
        rows.forEach((note, names) -> notes.add("Bootstrap: " + note.sentence() + of(names, limits.size()) + "."));
        limits.values().stream()
                .mapToInt(BootstrapInterval::undefined)
                .filter(u -> u > 0)
                .max()
                .ifPresent(u -> notes.add("Resamples without a value, for the row with the most of them: " + u + " of "
                        + settings.rules().replicates() + "."));
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
