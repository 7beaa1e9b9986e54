package quadmean.design;

import quadmean.model.Boundary;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Rule;

/** What the kind of plot asks of the other tables, and they of it. */
final class PlotChecks {
    private PlotChecks() {}

    static void check(Section root, Design design) {
        Section plot = root.table("plot");
        boundary(plot, design);
        predictions(root, design);
        if (design.plot() instanceof PlotDesign.Complete) {
            complete(root, plot, design);
        }
    }

    private static void boundary(Section plot, Design design) {
        Boundary boundary = design.plotRules().boundary();
        if (has(design, ColumnRole.EDGE) && boundary.times().size() == 1) {
            plot.problem(
                    Rule.DESIGN_MISSING,
                    "boundary",
                    boundary.id(),
                    "a tally with a column edge needs the treatment of the boundary: \"mirage\", \"walkthrough\" or"
                            + " \"inward_sweep\"");
        }
    }

    private static void predictions(Section root, Design design) {
        boolean threeP = design.plot().measuring() instanceof Measuring.ThreeP;
        if (threeP && !design.tallies().isEmpty() && !has(design, ColumnRole.PREDICTION)) {
            root.problem(Rule.DESIGN_MISSING, "threep", "", "3P sampling needs a column prediction in [tally.columns]");
        }
        boolean takes = design.plot() instanceof PlotDesign.Complete || design.plot() instanceof PlotDesign.Point;
        if (root.has("threep") && !takes) {
            root.problem(
                    Rule.DESIGN_VALUE,
                    "threep",
                    "",
                    "3P sampling goes with a complete tally or with points: plot.kind = \"complete\" or \"point\"");
        }
    }

    /** Nothing lies beyond a tract that is tallied whole, and no part of it is left out. */
    private static void complete(Section root, Section plot, Design design) {
        if (design.plotRules().boundary() != Boundary.NOT_STATED) {
            plot.problem(
                    Rule.DESIGN_VALUE,
                    "boundary",
                    design.plotRules().boundary().id(),
                    "a complete tally has no plots that could reach over the boundary");
        }
        if (!design.exceptions().cut().isEmpty()
                || !design.exceptions().notReached().isEmpty()) {
            root.table("selection")
                    .problem(
                            Rule.DESIGN_VALUE,
                            design.exceptions().cut().isEmpty() ? "not_reached" : "cut",
                            "",
                            "a complete tally leaves nothing out; take the area of the part out of that of its stratum");
        }
    }

    private static boolean has(Design design, ColumnRole role) {
        return design.tallies().stream().anyMatch(t -> t.columns().containsKey(role));
    }
}
