package quadmean.audit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.SomePlots;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.StandMean;
import quadmean.estimate.Worksheet;
import quadmean.model.Plot;
import quadmean.stats.Moments;
import quadmean.stats.PairedDifference;
import quadmean.stats.PairedDifference.Equivalence;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** What plots hold by the crew's readings and by the checker's, both with the curves and equations of the cruise. */
final class PlotValues {
    /** Error rate of each of the two one-sided tests: the usual 5 %. */
    private static final double LEVEL = 0.05;

    private final CruiseResult cruise;
    private final Map<String, Double> cruised = new HashMap<>();
    private final Map<String, Double> checked = new HashMap<>();

    private PlotValues(CruiseResult cruise) {
        this.cruise = cruise;
    }

    static PlotValues of(CruiseResult cruise, Worksheet sheet, List<Plot> checkedPlots) {
        PlotValues values = new PlotValues(cruise);
        if (Audit.whyNoValues(cruise).isPresent()) {
            return values;
        }
        StandMean mean = StandMean.of(
                sheet.strata(), sheet.plots(), sheet.settings(), cruise.design().targetAttribute());
        sheet.plots().forEach(p -> values.cruised.put(p.id(), mean.value(p)));
        for (SampledPlot plot : SomePlots.plots(cruise, checkedPlots)) {
            values.checked.put(plot.id(), mean.value(plot));
        }
        return values;
    }

    double cruised(String plot) {
        return cruised.getOrDefault(plot, Double.NaN);
    }

    double checked(String plot) {
        return checked.getOrDefault(plot, Double.NaN);
    }

    ValueCheck compare(List<PlotCheck> plots, OptionalDouble marginPercent) {
        Attribute attribute = cruise.design().targetAttribute();
        Optional<String> why = Audit.whyNoValues(cruise);
        double[] differences = plots.stream().mapToDouble(PlotCheck::difference).toArray();
        if (why.isPresent() || differences.length == 0 || Double.isNaN(Moments.sum(differences))) {
            return ValueCheck.none(attribute, why.orElse("no plot has a known value in both tallies"));
        }
        PairedDifference paired = PairedDifference.of(differences);
        double mean = Moments.of(plots.stream().mapToDouble(PlotCheck::checked).toArray())
                .mean();
        Optional<Equivalence> equivalence = marginPercent.isPresent() && mean > 0
                ? Optional.of(paired.equivalence(marginPercent.getAsDouble() / 100 * mean, LEVEL))
                : Optional.empty();
        double total = cruise.estimate()
                .row(EstimateRow.ALL, EstimateRow.ALL, attribute, Basis.TOTAL)
                .map(EstimateRow::mean)
                .orElse(Double.NaN);
        return new ValueCheck(attribute, paired, mean, equivalence, total, "");
    }
}
