package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.design.Design;
import quadmean.design.StratumEntry;
import quadmean.model.PlotDesign;
import quadmean.model.Rule;
import quadmean.report.HtmlTable.Cell;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** How the numbers were worked out, with sources, and the design they were worked out from. */
final class MethodSection {
    private final CruiseResult result;
    private final Design design;

    private MethodSection(CruiseResult result) {
        this.result = result;
        this.design = result.design();
    }

    static String markup(CruiseResult result) {
        MethodSection section = new MethodSection(result);
        Html html = new Html().section("methods", "Methods");
        html.raw("<dl>\n");
        section.sampling(html);
        section.estimation(html);
        section.trees(html);
        html.raw("</dl>\n").raw(section.strata());
        design(html, section.design);
        return html.endSection().toString();
    }

    private void sampling(Html html) {
        item(
                html,
                "Plots chosen as",
                design.plot() instanceof PlotDesign.Complete
                        ? "Complete tally: none was left out."
                        : Wording.capital(EstimatorWords.selection(design)) + ". A grid that runs in step with"
                                + " ridges, roads or old cutting lines can make a systematic sample better or worse than its error says.");
        item(html, "Plots", plots(design));
        FieldworkItems.of(design).forEach(i -> item(html, i.term(), i.words()));
        item(
                html,
                "Expansion",
                design.plot() instanceof PlotDesign.Complete
                        ? "Each tree stands for itself: for one over the area of its stratum, in trees per unit area."
                        : design.plot() instanceof PlotDesign.Point
                                ? "Each tallied tree stands for the basal area factor over its own basal area, in trees per unit area."
                                : "Each tallied tree stands for one over the area of the plot it counts on, in trees per unit area.");
    }

    /** Kind and size of the plots, in words. */
    static String plots(Design design) {
        PlotDesign plot = design.plot();
        if (plot instanceof PlotDesign.Point point) {
            double us = Unit.SQUARE_METRES_PER_HECTARE.convert(point.basalAreaFactor(), Unit.SQUARE_FEET_PER_ACRE);
            String metric = Wording.plain(Math.round(point.basalAreaFactor() * 1e4) / 1e4) + " "
                    + Unit.SQUARE_METRES_PER_HECTARE.label();
            return "Points with a basal area factor of "
                    + both(
                            design.units(),
                            Wording.plain(Math.round(us * 1e4) / 1e4) + " " + Unit.SQUARE_FEET_PER_ACRE.label(),
                            metric)
                    + "."
                    + PlotWords.sweep(point.sweep())
                    + PlotWords.measuring(point.measuring());
        }
        if (plot instanceof PlotDesign.Strip strip) {
            return "Strips of " + area(design, strip.areaHa()) + ", " + PlotWords.size(strip, design.units()) + ".";
        }
        if (plot instanceof PlotDesign.Complete complete) {
            return "Parts of the strata, which together are the whole." + PlotWords.measuring(complete.measuring());
        }
        if (plot instanceof PlotDesign.Fixed fixed) {
            return "Plots of " + area(design, fixed.areaHa()) + ".";
        }
        List<String> rings = new ArrayList<>();
        for (PlotDesign.Ring ring : ((PlotDesign.Nested) plot).rings()) {
            String cm = Wording.plain(Math.round(ring.minDbhCm() * 100) / 100.0) + " cm";
            double inches = Unit.CENTIMETRE.convert(ring.minDbhCm(), Unit.INCH);
            rings.add("dbh from " + both(design.units(), Wording.plain(Math.round(inches * 100) / 100.0) + " in", cm)
                    + " on " + area(design, ring.areaHa()));
        }
        return "Nested plots: " + String.join("; ", rings) + ".";
    }

    private static String area(Design design, double areaHa) {
        double acres = Unit.HECTARE.convert(areaHa, Unit.ACRE);
        return both(design.units(), Rounding.constant(acres) + " ac", Rounding.constant(areaHa) + " ha");
    }

    private static String both(UnitSystem units, String us, String metric) {
        return units == UnitSystem.US ? us + " (" + metric + ")" : metric + " (" + us + ")";
    }

    private void estimation(Html html) {
        item(html, "Estimator", EstimatorWords.estimator(design));
        item(
                html,
                "Ratios",
                "Quadratic mean diameter is the dbh of the tree of mean basal area. The error of a ratio"
                        + " of two estimates comes by linearisation (Cochran 1977, section 2.11, from memory).");
        item(html, "Finite population", EstimatorWords.finitePopulation(design));
        item(html, "Degrees of freedom", EstimatorWords.degrees(design));
        item(html, "Limits", LimitWords.of(result));
        item(
                html,
                "Plots needed",
                EstimatorWords.hasPlotsNeeded(design)
                        ? "From the variation seen between plots, the smallest number expected to bring the"
                                + " sampling error to ±" + Wording.percent(design.targetErrorPercent())
                                + (design.strata().size() == 1 ? "." : ", shared among strata by area.")
                        : "Not worked out for this design, whose error does not go by the number of plots alone.");
        item(
                html,
                "Rounding",
                "Numbers are cut at the second digit of their standard error; estimate.json and"
                        + " estimates.csv have all digits.");
    }

    private void trees(Html html) {
        Design.HeightEntry height = design.height();
        String unit = design.units().length().label();
        item(
                html,
                "Heights",
                "Heights missing in the tally are filled from height-diameter curves fitted by nonlinear"
                        + " least squares, breast height " + Wording.plain(height.breastHeight()) + " " + unit
                        + ". A species with at least " + height.minHeights()
                        + " heights gets a curve of its own; of the forms"
                        + " that converge to a sensible shape the one with the smallest leave-one-out error is used, or a form"
                        + " with fewer parameters whose mean squared error is greater by no more than one standard error of"
                        + " the difference, unless the design asks for a form. Other species borrow the curve of their group,"
                        + " else of all species, from three heights up scaled by the mean ratio of heights above breast"
                        + " height. Curves are moved to the level of a plot only where that predicts held-out trees better"
                        + " by more than two standard errors. Curves fitted to heights themselves need no correction of bias;"
                        + " calibrated ones are corrected as the table says.");
        item(
                html,
                "Heights off the curve",
                "A height more than " + Wording.plain(height.offCurve())
                        + " robust standard deviations (1.4826 times the median absolute residual) from the curve of its species"
                        + " is listed as a problem; " + offCurve(design) + ".");
        item(
                html,
                "Volumes",
                "Volumes of trees come from dbh and height by the equations listed above. Nothing is taken off them for"
                        + " defect, rot, breakage or stump and top unless an equation already does so."
                        + (WoodSection.hasLogs(result)
                                ? " Logs and board feet are another matter: Logs and products says how they are cut,"
                                        + " measured and made net of defect."
                                : ""));
        double inches = Unit.CENTIMETRE.convert(design.diameterClassCm(), Unit.INCH);
        item(
                html,
                "Diameter classes",
                "Width "
                        + both(
                                design.units(),
                                Wording.plain(Math.round(inches * 100) / 100.0) + " in",
                                Wording.plain(Math.round(design.diameterClassCm() * 100) / 100.0) + " cm")
                        + ".");
    }

    /** What becomes of a height off its curve. */
    static String offCurve(Design design) {
        return switch (design.policy(Rule.HEIGHT_OFF_CURVE)) {
            case REFUSE -> "the design has the run stop there";
            case DROP -> "its row is dropped";
            case KEEP -> "the height is set aside and filled from the curve";
        };
    }

    private String strata() {
        HtmlTable table = HtmlTable.of(
                "Strata",
                List.of(
                        Cell.text("Stratum"),
                        Cell.text("Name"),
                        Cell.number("Area (ac)"),
                        Cell.number("Area (ha)"),
                        Cell.number("Plots")));
        for (StratumEntry entry : design.strata()) {
            double ha = entry.stratum().areaHa();
            double acres = Unit.HECTARE.convert(ha, Unit.ACRE);
            table.row(List.of(
                    Cell.text(entry.stratum().code()),
                    Cell.text(entry.stratum().name()),
                    Cell.number(Rounding.significant(acres, 4).text(acres)),
                    Cell.number(Rounding.significant(ha, 4).text(ha)),
                    Cell.number(
                            Rounding.count(Facts.plots(result, entry.stratum().code())))));
        }
        return table.markup();
    }

    /** The design itself, so that the page says all that it was made from. */
    static void design(Html html, Design design) {
        html.element("p", "Design file " + JsonInputs.fileName(design) + ", seed " + design.seed() + ", SHA-256:");
        html.element("p", "hash", design.sha256());
        html.printedDetails("The design, word for word").code(design.text()).endDetails();
    }

    private static void item(Html html, String term, String words) {
        html.element("dt", term).element("dd", words);
    }
}
