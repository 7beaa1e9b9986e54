package quadmean.audit;

import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quadmean.audit.GrowthTree.Fate;
import quadmean.design.Design;
import quadmean.design.RemeasurementSettings;
import quadmean.design.RemeasurementSettings.Absent;
import quadmean.estimate.Expansion;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.StandMean;
import quadmean.estimate.Stem;
import quadmean.model.PlotDesign;
import quadmean.model.Tree;
import quadmean.model.TreeStatus;

/**
 * Says what became of trees in one attribute.
 *
 * @param design the design
 * @param settings what it says of the two dates
 * @param mean the attribute, with the sampling design
 * @param before plots at the earlier date
 * @param after plots at the later date
 */
record TreeFates(
        Design design,
        RemeasurementSettings settings,
        StandMean mean,
        Map<String, SampledPlot> before,
        Map<String, SampledPlot> after) {

    GrowthTree of(GrowthPair pair) {
        double v1 = value(before, pair.plot(), pair.stemBefore());
        double v2 = value(after, pair.plot(), pair.stemAfter());
        Fate fate = fate(pair, v1, v2);
        return new GrowthTree(
                pair.plot(), pair.label(), fate, v1, v2, fate == Fate.SURVIVOR ? growth(pair, v1, v2) : 0);
    }

    private double value(Map<String, SampledPlot> plots, String plot, @Nullable Stem stem) {
        return stem == null ? 0 : mean.value(Objects.requireNonNull(plots.get(plot)), stem);
    }

    private Fate fate(GrowthPair pair, double v1, double v2) {
        if (v1 != 0 && v2 != 0) {
            return Fate.SURVIVOR;
        }
        if (v1 != 0) {
            boolean cut = pair.after() == null && settings.absent() == Absent.CUT;
            return cut ? Fate.REMOVAL : Fate.MORTALITY;
        }
        if (v2 == 0) {
            return Fate.NONE;
        }
        Tree tree = pair.after();
        boolean large = tree != null && tree.dbhCm() > limitCm(design, settings);
        return pair.before() == null && hasOngrowth(design) && large ? Fate.ONGROWTH : Fate.INGROWTH;
    }

    /** Value of one tree now less that of then, times the trees that it stood for then. */
    private double growth(GrowthPair pair, double v1, double v2) {
        double w1 = weight(Objects.requireNonNull(pair.before()));
        double w2 = weight(Objects.requireNonNull(pair.after()));
        return w1 * (v2 / w2) - v1;
    }

    private double weight(Tree tree) {
        return Expansion.treesPerHa(design.plot(), tree.dbhCm())
                * tree.detail().times()
                / design.exceptions().inside(tree.plot());
    }

    /** From this dbh on a new tree was above the smallest dbh before (cm). */
    static double limitCm(Design design, RemeasurementSettings settings) {
        double smallest = design.plot() instanceof PlotDesign.Nested nested
                ? nested.rings().get(0).minDbhCm()
                : design.sizes().smallestCm();
        return smallest + settings.largestGrowthCm().orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether a tree's weight changes as it grows, so that trees may come in that were large enough before. */
    static boolean hasOngrowth(Design design) {
        return design.plot() instanceof PlotDesign.Point || design.plot() instanceof PlotDesign.Nested;
    }

    static boolean isAlive(Tree tree) {
        return tree.detail().status() == TreeStatus.LIVE || tree.detail().status() == TreeStatus.CULL;
    }
}
