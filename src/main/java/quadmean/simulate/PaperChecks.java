package quadmean.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import quadmean.design.Design;
import quadmean.design.LayoutSettings;
import quadmean.design.SimulationSettings.Prediction;
import quadmean.layout.FieldPlan;
import quadmean.model.Boundary;
import quadmean.model.Estimator;
import quadmean.model.FinitePopulation;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.units.Attribute;

/** What can be cruised on paper and what cannot. */
final class PaperChecks {
    private static final Set<Estimator> UNKNOWN = Set.of(
            Estimator.POST_STRATIFIED,
            Estimator.DOUBLE_STRATIFIED,
            Estimator.TWO_STAGE,
            Estimator.HANSEN_HURWITZ,
            Estimator.HORVITZ_THOMPSON);

    private PaperChecks() {}

    /** The smallest tree that such a cruise tallies (cm). */
    static double smallestDbhCm(Design design) {
        double ring =
                design.plot() instanceof PlotDesign.Nested n ? n.rings().get(0).minDbhCm() : 0;
        return Math.max(ring, design.sizes().smallestCm());
    }

    /** Refuses what cannot be run, with a sentence for the user. */
    static void check(Design design, Forest forest) {
        refuseIf(
                forest.trees().isEmpty(),
                "no tree of the forest stands on the tract and is large enough to be tallied");
        refuseIf(
                design.plot() instanceof PlotDesign.Strip,
                "strips are not cruised on paper; simulate fixed plots of the same area, or points");
        Estimator estimator = design.estimation().estimation().estimator();
        refuseIf(
                UNKNOWN.contains(estimator),
                "cruises on paper know no classes, chances or compartments: estimator = \"" + estimator.id()
                        + "\" is not simulated");
        boolean isInClusters = design.layout().flatMap(l -> l.cluster()).isPresent();
        refuseIf(
                estimator == Estimator.CLUSTER && !isInClusters,
                "estimator = \"cluster\" takes layout.cluster, the plots of a cluster, and layout.cluster_spacing");
        heights(design, forest);
        boundary(design, forest);
    }

    private static void heights(Design design, Forest forest) {
        boolean needsHeight =
                design.targetAttribute() != Attribute.TREES && design.targetAttribute() != Attribute.BASAL_AREA;
        refuseIf(
                needsHeight && !forest.hasHeights(),
                "the true " + design.targetAttribute().label()
                        + " of the forest is not known: its trees have no heights. Give them a column height, name a table of"
                        + " heights with --heights, or aim at basal_area with cruise.target_attribute");
        boolean isForetold = design.plot().measuring() instanceof Measuring.ThreeP
                && design.simulation().prediction() == Prediction.DBH_SQUARED_HEIGHT;
        refuseIf(isForetold && !forest.hasHeights(), "predictions from heights need a forest with heights");
    }

    private static void boundary(Design design, Forest forest) {
        Boundary boundary = design.plotRules().boundary();
        if (boundary != Boundary.MIRAGE && boundary != Boundary.INWARD_SWEEP) {
            return;
        }
        boolean isWhole = design.layout()
                .map(l -> l.extent() == LayoutSettings.Extent.TRACT)
                .orElse(!design.selection().isStratified());
        List<Ground> grounds =
                isWhole ? List.of(forest.whole()) : List.copyOf(forest.strata().values());
        refuseIf(
                grounds.stream().anyMatch(g -> !g.isRectangle()),
                "boundary = \"" + boundary.id()
                        + "\" is simulated on rectangles alone; take \"walkthrough\" for other tracts");
        double reach = PlotTaker.of(design, forest).farthestM();
        double narrow = grounds.stream().mapToDouble(Ground::narrow).min().orElse(0);
        refuseIf(
                !(reach < narrow),
                String.format(
                        Locale.ROOT,
                        "plots reach %.1f m and the ground is %.1f m wide: a reflected plot must be smaller than that; take a"
                                + " larger basal area factor, or smaller plots",
                        reach,
                        narrow));
    }

    /** Refuses a layout that cannot be drawn, such as a grid of millions of plots. */
    static void layout(PaperDesign paper, Forest forest) {
        if (paper.design().plot() instanceof PlotDesign.Complete) {
            return;
        }
        FieldPlan.trouble(
                        paper.layout(),
                        forest.tract(),
                        paper.plots(),
                        paper.design().units())
                .ifPresent(t -> refuseIf(true, t));
    }

    private static void refuseIf(boolean wrong, String sentence) {
        if (wrong) {
            throw new IllegalArgumentException(sentence);
        }
    }

    /** Whether the expected value of one plot is that of the whole estimate: plots anywhere on the ground that their mean is for, every tree of them measured. */
    static boolean isIntegrated(PaperDesign paper) {
        Design design = paper.design();
        return !(design.plot() instanceof PlotDesign.Complete)
                && design.plot().measuring() instanceof Measuring.All
                && design.estimation().estimation().estimator() == Estimator.MEAN
                && (paper.layout().extent() == LayoutSettings.Extent.STRATUM
                        || design.strata().size() == 1)
                && paper.layout().bufferM() == 0;
    }

    /** What a reader should know. */
    static List<String> notes(Design design, Forest forest) {
        List<String> notes = new ArrayList<>();
        if (!forest.hasHeights() && !design.volumes().isEmpty()) {
            notes.add("Volumes are left out: the trees of the forest have no heights.");
        }
        if (design.finitePopulation() == FinitePopulation.CORRECT) {
            notes.add(
                    "The design corrects for a finite population, which holds where plots tile the tract; here they lie"
                            + " anywhere, so that the correction makes standard errors too small.");
        }
        notes.add(
                "Trees are measured without mistakes or errors of reading, and stand where the map has them; what the field"
                        + " adds comes on top.");
        return notes;
    }
}
