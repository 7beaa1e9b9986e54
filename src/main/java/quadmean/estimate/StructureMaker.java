package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quadmean.model.Stratum;

/** Makes the tables by size and the stand statistics. */
final class StructureMaker {
    private StructureMaker() {}

    static StandStructure structure(List<Stratum> strata, List<SampledPlot> plots, EstimateSettings settings) {
        Sample whole = Sample.of(strata, plots, settings);
        DiameterFitter fitter = new DiameterFitter(whole, plots, settings);
        Optional<DiameterFit> fit = fitter.fit();
        List<StandStatistic> statistics =
                new ArrayList<>(StatisticMaker.of(whole, plots, settings, EstimateRow.ALL, fitter, fit));
        if (strata.size() > 1) {
            for (Stratum stratum : strata) {
                List<SampledPlot> own = plots.stream()
                        .filter(p -> p.stratum().equals(stratum.code()))
                        .toList();
                Sample sample = Sample.of(List.of(stratum), own, settings);
                DiameterFitter ownFitter = new DiameterFitter(sample, own, settings);
                statistics.addAll(StatisticMaker.of(sample, own, settings, stratum.code(), ownFitter, ownFitter.fit()));
            }
        }
        return new StandStructure(ClassTable.of(whole, plots, settings), statistics, fit);
    }
}
