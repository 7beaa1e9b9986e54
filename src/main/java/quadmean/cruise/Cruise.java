package quadmean.cruise;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import quadmean.design.Design;
import quadmean.design.SpeciesEntry;
import quadmean.estimate.EstimateSettings;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.StandEstimate;
import quadmean.estimate.StandEstimator;
import quadmean.estimate.Stem;
import quadmean.estimate.Worksheet;
import quadmean.field.TallyReader;
import quadmean.height.CurveTable;
import quadmean.height.HeightSettings;
import quadmean.height.HeightedTree;
import quadmean.height.ResidualDraw;
import quadmean.model.CurveForm;
import quadmean.model.PlotDesign;
import quadmean.model.Policy;
import quadmean.model.Product;
import quadmean.model.Progress;
import quadmean.model.Rule;
import quadmean.model.Sweep;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.units.Attribute;

/** The whole line from design and tally to estimate. */
public final class Cruise {
    private Cruise() {}

    /**
     * Reads the tally and finds what is wrong with it; nothing is estimated.
     *
     * @throws IOException if a tally file is missing or cannot be read
     */
    public static Tally check(Design design) throws IOException {
        return check(design, WoodBooks.of(design));
    }

    static Tally check(Design design, WoodBooks books) throws IOException {
        return check(design, books, TallyReader.read(design));
    }

    /** Holds a tally as it was read to the rules that need all of its trees together. */
    static Tally check(Design design, WoodBooks books, Tally tally) {
        if (tally.isRefused()) {
            return tally;
        }
        return Equations.check(design, books, TreeChecks.apply(design, heightSettings(design), tally));
    }

    /**
     * Works a cruise through: read, check, fit and fill heights, volumes, estimate.
     *
     * @throws IOException if a tally file is missing or cannot be read
     */
    public static CruiseRun run(Design design) throws IOException {
        return run(design, Progress.SILENT);
    }

    /**
     * Works a cruise through: read, check, fit and fill heights, volumes, estimate.
     *
     * @param progress told of long work
     * @throws IOException if a tally file is missing or cannot be read
     */
    public static CruiseRun run(Design design, Progress progress) throws IOException {
        WoodBooks books = WoodBooks.of(design);
        return run(design, books, check(design, books), progress);
    }

    /** Works a tally that was read and checked. */
    static CruiseRun run(Design design, WoodBooks books, Tally tally, Progress progress) {
        if (tally.isRefused()) {
            return new CruiseRun(tally, null, null);
        }
        CurveTable curves = CurveTable.fit(TreeChecks.wholeTrees(tally), heightSettings(design), progress);
        WorkedTally worked = WorkedTally.of(design, books, tally, curves);
        Woods woods = worked.woods();
        List<List<HeightedTree>> byPlot = worked.trees();
        List<SampledPlot> plots = worked.plots();
        EstimateSettings settings = worked.settings();
        StandEstimate estimate = StandEstimator.estimate(design.stratumList(), plots, settings, design.seed());
        estimate = estimate.withNotes(woods.notes()).withNotes(plotNotes(design));
        List<Remeasure> remeasure = RemeasureList.of(design, tally, curves, books.volumes(), estimate);
        List<ErrorBudget> budgets = new BudgetMaker(
                        design, tally, heightSettings(design), curves, books, settings, byPlot, plots, progress)
                .budgets();
        return new CruiseRun(
                tally,
                new CruiseResult(
                        design,
                        tally,
                        curves,
                        byPlot.stream().flatMap(List::stream).toList(),
                        plots.stream()
                                .flatMap(p -> p.stems().stream())
                                .map(Stem::wood)
                                .toList(),
                        woods.used(),
                        estimate,
                        remeasure,
                        budgets),
                new Worksheet(design.stratumList(), plots, settings));
    }

    /** What plots that are not like the others mean for the estimate. */
    private static List<String> plotNotes(Design design) {
        List<String> notes = new ArrayList<>();
        String corrected = design.followUp().instrument().note();
        if (!corrected.isEmpty()) {
            notes.add(corrected);
        }
        String boundary = design.plotRules().boundary().note();
        if (!boundary.isEmpty()) {
            notes.add(boundary);
        }
        if (design.plot() instanceof PlotDesign.Point point && point.sweep() != Sweep.FULL) {
            notes.add("A " + point.sweep().id() + " sweep at every point: each tree counts "
                    + point.sweep().multiplier()
                    + " times. Without bias as long as the side swept was fixed by rule or drawn"
                    + " at random, never chosen for what stands there.");
        }
        if (!design.exceptions().notReached().isEmpty()) {
            notes.add("Plots not reached were left out ("
                    + design.exceptions().notReached().size()
                    + "): the estimate holds for the part that can be reached, and is biased for the whole if the rest"
                    + " differs from it.");
        }
        if (!design.exceptions().cut().isEmpty()) {
            notes.add(
                    design.policy(Rule.PLOT_CUT) == Policy.KEEP
                            ? "Trees of plots cut by the line of their stratum are expanded by the share of the plot"
                                    + " that lies inside."
                            : "Plots cut by the line of their stratum were left out, which biases the estimate: the"
                                    + " edge is seen less than the interior.");
        }
        return notes;
    }

    /**
     * Reads, checks, and fits the height curves; fills and estimates nothing.
     *
     * @throws IOException if a tally file is missing or cannot be read
     */
    public static CurvesRun curves(Design design) throws IOException {
        return curves(design, Progress.SILENT);
    }

    /**
     * The same, telling how far it has come.
     *
     * @throws IOException if a tally file is missing or cannot be read
     */
    public static CurvesRun curves(Design design, Progress progress) throws IOException {
        Tally tally = check(design);
        if (tally.isRefused()) {
            return new CurvesRun(tally, null);
        }
        List<Tree> trees = TreeChecks.wholeTrees(tally);
        CurveTable curves = CurveTable.fit(trees, heightSettings(design), progress);
        return new CurvesRun(
                tally,
                new CurvesRun.Result(
                        design,
                        trees,
                        curves,
                        HeightAdvice.next(design, trees, curves),
                        HeightAdvice.plan(design, trees, curves)));
    }

    static HeightedTree fill(Design design, CurveTable curves, Tree tree) {
        HeightedTree filled = curves.fill(tree);
        return switch (design.height().curves().filling()) {
            case MEAN -> filled;
            case DRAWN -> new ResidualDraw(design.seed()).apply(filled);
        };
    }

    static HeightSettings heightSettings(Design design) {
        Map<String, CurveForm> forms = new HashMap<>();
        for (SpeciesEntry s : design.species().values()) {
            if (s.curve() != null) {
                forms.put(s.code(), s.curve());
            }
        }
        return new HeightSettings(
                design.units(),
                design.height().breastHeight(),
                forms,
                WoodBooks.groups(design),
                design.height().minHeights(),
                design.height().offCurve(),
                design.height().curves().weights(),
                design.height().curves().calibration());
    }

    private static List<String> products(Design design) {
        return design.wood().logs().stream()
                .flatMap(l -> l.products().stream())
                .map(Product::code)
                .toList();
    }

    static EstimateSettings settings(Design design, Map<Attribute, String> missing) {
        return new EstimateSettings(
                design.plot(),
                design.finitePopulation(),
                design.degreesRule(),
                design.confidence(),
                design.targetErrorPercent(),
                design.targetAttribute(),
                design.sizes(),
                design.attributes(),
                products(design),
                missing,
                design.estimation());
    }
}
