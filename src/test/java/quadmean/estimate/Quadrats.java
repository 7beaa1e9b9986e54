package quadmean.estimate;

import static quadmean.support.ReferenceFiles.csv;
import static quadmean.support.ReferenceFiles.number;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quadmean.model.DegreesRule;
import quadmean.model.EstimatorRules;
import quadmean.model.FinitePopulation;
import quadmean.model.ListedPlot;
import quadmean.model.PlotDesign;
import quadmean.model.PlotFacts;
import quadmean.model.Stratum;
import quadmean.units.Attribute;

/** The 64 quadrats of longleaf.csv as plots of 0.0625 ha, with all that a list of plots could say of them. */
final class Quadrats {
    static final double HA = 0.0625;
    static final List<Stratum> WHOLE = List.of(new Stratum("stand", "stand", 4));
    private static final List<NamedCsvRecord> ROWS = csv("longleaf-quadrats.csv");

    private Quadrats() {}

    static EstimateSettings settings(EstimatorRules rules, FinitePopulation finite) {
        return new EstimateSettings(
                        new PlotDesign.Fixed(HA),
                        finite,
                        DegreesRule.PLOTS_MINUS_STRATA,
                        0.95,
                        10,
                        Attribute.BASAL_AREA,
                        10,
                        "no equation")
                .with(rules);
    }

    /** Auxiliary: stems; cluster of four; class: quarter; place on the full grid of 8 x 8. */
    static PlotFacts facts(int id) {
        NamedCsvRecord r = ROWS.get(id - 1);
        return PlotFacts.NONE
                .withAuxiliary(number(r, "stems"))
                .withCluster(r.getField("cluster"), 4)
                .withGroup(r.getField("stratum"))
                .withPlace((int) number(r, "row"), (int) number(r, "col"));
    }

    /** Trees of less than 30 cm are called small, so that there are domains to look at. */
    static List<SampledPlot> plots(double[] ids) {
        Map<Integer, List<Stem>> stems = new TreeMap<>();
        for (NamedCsvRecord tree : csv("longleaf.csv")) {
            int column = (int) Math.min(7, Math.floor(number(tree, "x_m") / 25));
            int row = (int) Math.min(7, Math.floor(number(tree, "y_m") / 25));
            double dbh = number(tree, "dbh_cm");
            stems.computeIfAbsent(1 + column + 8 * row, k -> new ArrayList<>())
                    .add(new Stem(dbh < 30 ? "small" : "tall", dbh, Double.NaN));
        }
        List<SampledPlot> plots = new ArrayList<>();
        for (double id : ids) {
            int k = (int) id;
            plots.add(new SampledPlot(String.valueOf(k), "stand", stems.getOrDefault(k, List.of()), 1, facts(k)));
        }
        return plots;
    }

    static List<ListedPlot> listed(double[] ids) {
        return Arrays.stream(ids)
                .mapToObj(id -> new ListedPlot(String.valueOf((int) id), "stand", facts((int) id)))
                .toList();
    }
}
