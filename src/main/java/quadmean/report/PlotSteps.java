package quadmean.report;

import java.util.stream.Collectors;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.ExplainRequest;
import quadmean.cruise.ExplainRequest.Subject;
import quadmean.cruise.Explanation;
import quadmean.cruise.TreeWorking;
import quadmean.estimate.CountedStem;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.StemWorking;
import quadmean.model.PlotDesign;
import quadmean.model.Tree;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** How the value of a plot comes about, tree by tree. */
final class PlotSteps {
    private final CruiseResult result;
    private final Explanation.OfPlot plot;
    private final ExplainRequest request;
    private final UnitSystem units;
    private final Attribute attribute;
    private final Steps steps;

    PlotSteps(CruiseResult result, Explanation.OfPlot plot, Steps steps) {
        this.result = result;
        this.plot = plot;
        this.request = plot.request();
        this.units = result.design().units();
        this.attribute = request.attribute();
        this.steps = steps;
    }

    void write() {
        String id = plot.plot().plot().id();
        String species = species();
        steps.say("Plot " + id + ", stratum "
                + Names.stratum(result.design(), plot.plot().plot().stratum()) + ": " + attribute.label() + ", "
                + (request.subject() == Subject.TREE ? "tree " + request.id() : species));
        plot.trees().forEach(this::tree);
        String unit = perArea().label();
        if (request.subject() == Subject.TREE) {
            plot.trees()
                    .forEach(t -> steps.say("tree " + t.tree().tree().label() + ", " + attribute.label() + " = "
                            + Steps.number(perArea(t.stem().perHa())) + " " + unit));
            return;
        }
        sum();
        steps.say("plot " + id + ", " + attribute.label() + ", " + species + " = "
                + Steps.number(perArea(plot.plot().perHa())) + " " + unit);
    }

    private void sum() {
        String terms = plot.trees().stream()
                .filter(t -> t.stem().counts())
                .map(t -> Steps.term(perArea(t.stem().perHa())))
                .collect(Collectors.joining(" + "));
        double rest = perArea(plot.plot().rest());
        double value = perArea(plot.plot().perHa());
        boolean isAll = Steps.isSame(value, value - rest);
        steps.say("Together");
        int counted = plot.plot().plot().counted().stream()
                .mapToInt(CountedStem::count)
                .sum();
        if (counted > 0) {
            steps.say(
                    "  " + Headline.count(counted, "tree")
                            + " counted or predicted and not measured add nothing here; --explain total shows how they come in");
        }
        if (terms.isEmpty() && isAll) {
            steps.say("  no tree here counts in " + attribute.label() + ": the plot is a zero");
            return;
        }
        if (!isAll) {
            steps.say("  beside these trees, such as trees counted and not measured: " + Steps.number(rest) + " "
                    + perArea().label());
        }
        steps.step(
                "sum",
                (terms.isEmpty() ? "0" : terms) + (isAll ? "" : " + " + Steps.term(rest)),
                value,
                perArea().label());
    }

    private void tree(TreeWorking working) {
        Tree tree = working.tree().tree();
        Unit dbh = units.diameter();
        steps.say("Tree " + tree.label() + ", " + tree.file() + " line " + tree.row() + ": "
                + Names.species(result.design(), tree.species()) + ", dbh "
                + Steps.number(Unit.CENTIMETRE.convert(tree.dbhCm(), dbh)) + " " + dbh.label());
        if (!working.stem().counts()) {
            steps.say("  does not count in " + attribute.label() + " ("
                    + tree.detail().status().id() + "): adds 0");
            return;
        }
        new TreeSteps(result, working, attribute, steps).write();
        expansion(working.stem());
        adds(working.stem());
    }

    private void expansion(StemWorking stem) {
        if (isComplete()) {
            steps.say("  stands for itself alone");
            return;
        }
        Unit per = Attribute.TREES.unit(Basis.PER_AREA, units);
        double trees = Unit.TREES_PER_HECTARE.convert(stem.expansion(), per);
        String how = "";
        double value = Double.NaN;
        if (result.design().plot() instanceof PlotDesign.Point point) {
            double factor = Unit.SQUARE_METRES_PER_HECTARE.convert(point.basalAreaFactor(), units.basalAreaFactor());
            double section = Unit.SQUARE_METRE.convert(
                    BasalArea.ofTree(stem.stem().dbhCm()), Attribute.BASAL_AREA.unit(Basis.TOTAL, units));
            how = Steps.number(factor) + " / " + Steps.number(section);
            value = factor / section;
            steps.say("  basal area of the tree: " + Steps.number(section) + " "
                    + Attribute.BASAL_AREA.unit(Basis.TOTAL, units).label());
        } else if (stem.expansion() > 0) {
            double area = Unit.HECTARE.convert(1 / stem.expansion(), units.area());
            how = "1 / " + Steps.number(area);
            value = 1 / area;
        }
        if (Steps.isSame(value, trees)) {
            steps.step("stands for", how, trees, per.label());
        } else {
            steps.say("  stands for " + Steps.number(trees) + " " + per.label());
        }
    }

    /** What the row adds: expansion, number of trees, one tree; then the share of the plot inside, and what else there may be. */
    private void adds(StemWorking stem) {
        double inside = plot.plot().plot().inside();
        double further = stem.further(inside);
        boolean isPlain = Double.isNaN(further) || Steps.isSame(further, 1);
        double trees = isComplete()
                ? stem.expansion()
                : Unit.TREES_PER_HECTARE.convert(stem.expansion(), Attribute.TREES.unit(Basis.PER_AREA, units));
        String how = Steps.number(trees) + " × " + Steps.number(stem.stem().count()) + " × "
                + Steps.number(TreeSteps.shown(stem.perTree(), attribute, units))
                + (inside < 1 ? " / " + Steps.number(inside) : "")
                + (isPlain ? "" : " × " + Steps.number(further));
        String with = (inside < 1 ? ", by the share of the plot inside" : "")
                + (isPlain ? "" : ", by a further factor of the sampling design");
        steps.step(
                "adds, by " + Headline.count(Math.round((double) stem.stem().count()), "tree") + with,
                how,
                perArea(stem.perHa()),
                perArea().label());
    }

    /** The plots of a complete tally are parts of the whole, and their values add up. */
    private boolean isComplete() {
        return result.design().plot() instanceof PlotDesign.Complete;
    }

    private Basis basis() {
        return isComplete() ? Basis.TOTAL : Basis.PER_AREA;
    }

    private Unit perArea() {
        return attribute.unit(basis(), units);
    }

    private double perArea(double metric) {
        return attribute.unit(basis(), UnitSystem.METRIC).convert(metric, perArea());
    }

    private String species() {
        return request.species().equals(EstimateRow.ALL)
                ? "all species"
                : Names.species(result.design(), request.species());
    }
}
