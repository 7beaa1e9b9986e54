package quadmean.cruise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quadmean.design.Design;
import quadmean.estimate.EstimateSettings;
import quadmean.estimate.SampledPlot;
import quadmean.height.CurveTable;
import quadmean.height.HeightedTree;
import quadmean.model.PlotFacts;
import quadmean.model.Tally;

/**
 * A tally whose heights are filled and whose wood is worked out: what the estimate starts from.
 *
 * @param trees for each plot its trees with their heights
 * @param plots the plots, in the same order
 * @param woods the wood of the trees, with its account
 * @param settings how to estimate
 */
record WorkedTally(List<List<HeightedTree>> trees, List<SampledPlot> plots, Woods woods, EstimateSettings settings) {

    /**
     * Works a tally through.
     *
     * @param tally a tally that its checks let pass
     * @param curves the curves that heights are filled from
     */
    static WorkedTally of(Design design, WoodBooks books, Tally tally, CurveTable curves) {
        Woods woods = new Woods(design, books, curves);
        List<List<HeightedTree>> trees = new ArrayList<>();
        List<SampledPlot> plots = new ArrayList<>();
        Map<String, PlotFacts> facts = tally.facts();
        tally.plots().forEach(plot -> {
            List<HeightedTree> filled = plot.trees().stream()
                    .map(t -> Cruise.fill(design, curves, t))
                    .toList();
            trees.add(filled);
            plots.add(new SampledPlot(
                    plot.id(),
                    plot.stratum(),
                    filled.stream().map(woods::stem).toList(),
                    design.exceptions().inside(plot.id()),
                    facts.getOrDefault(plot.id(), PlotFacts.NONE),
                    plot.counted().stream().map(woods::counted).toList()));
        });
        EstimateSettings settings = Cruise.settings(design, woods.missing()).withListed(tally.listed());
        return new WorkedTally(trees, plots, woods, settings);
    }
}
