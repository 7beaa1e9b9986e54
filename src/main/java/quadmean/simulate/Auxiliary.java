package quadmean.simulate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import quadmean.design.Design;
import quadmean.design.SimulationSettings;
import quadmean.estimate.Expansion;
import quadmean.model.MappedTree;
import quadmean.model.PlotDesign;
import quadmean.simulate.PlotTaker.Seen;
import quadmean.units.BasalArea;

/** The auxiliary value of a plot on paper: what stands there per hectare, times an error that is lognormal with mean one. */
final class Auxiliary {
    private Auxiliary() {}

    /** The mean of the auxiliary over each stratum: that of the forest, since its errors average out. */
    static Map<String, Double> means(Design design, Forest forest) {
        Map<String, Double> means = new LinkedHashMap<>();
        int stratum = 0;
        for (Map.Entry<String, Ground> ground : forest.strata().entrySet()) {
            double sum = 0;
            for (int i = 0; i < forest.trees().size(); i++) {
                sum += forest.stratumOf(i) == stratum
                        ? value(design, forest.trees().get(i))
                        : 0;
            }
            means.put(ground.getKey(), sum / ground.getValue().areaHa());
            stratum++;
        }
        return means;
    }

    /** The auxiliary of a plot with these trees. */
    static double of(Design design, Forest forest, List<Seen> seen, SplittableRandom random) {
        double sum = 0;
        for (Seen s : seen) {
            MappedTree tree = forest.trees().get(s.tree());
            sum += s.times() * treesPerHa(design.plot(), tree) * value(design, tree);
        }
        return sum * error(design.simulation().auxiliaryErrorPercent(), random);
    }

    private static double treesPerHa(PlotDesign plot, MappedTree tree) {
        return plot instanceof PlotDesign.Point p
                ? p.perTree() / BasalArea.ofTree(tree.dbhCm())
                : Expansion.treesPerHa(plot, tree.dbhCm());
    }

    private static double value(Design design, MappedTree tree) {
        return design.simulation().auxiliary() == SimulationSettings.Auxiliary.TREES
                ? 1
                : BasalArea.ofTree(tree.dbhCm());
    }

    /** A lognormal factor of mean one; its coefficient of variation is about the percentage. */
    static double error(double percent, SplittableRandom random) {
        double s = percent / 100;
        return s == 0 ? 1 : Math.exp(s * random.nextGaussian() - s * s / 2);
    }
}
