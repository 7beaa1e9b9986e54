package quadmean.report;

import java.util.List;
import java.util.stream.Collectors;
import quadmean.design.Design;
import quadmean.layout.SheetPlot;
import quadmean.layout.SheetSet;
import quadmean.model.Boundary;
import quadmean.model.PlotDesign;

/** What the crew does where a plot reaches over the line of the tract. */
final class SheetEdges {
    private static final List<String> ALWAYS = List.of(
            "Leave the plot where it fell. A plot moved inward, or left out because it lies near the line, makes the estimate"
                    + " wrong, and nobody can see it afterward.",
            "The centre decides to which stratum a plot belongs.",
            "Do not cross onto other land without leave.");

    private SheetEdges() {}

    static String markup(Design design, SheetSet set) {
        Html html = new Html().raw("<section class=\"sheet\" id=\"edges\">\n").element("h2", "At the boundary");
        Boundary boundary = design.plotRules().boundary();
        list(html, "ul", ALWAYS);
        html.element("h3", heading(boundary));
        list(html, "ol", steps(boundary, design.plot() instanceof PlotDesign.Point));
        if (!boundary.note().isEmpty()) {
            html.element("p", "small", "What it does to the estimate: " + boundary.note());
        }
        String near = set.plots().stream()
                .filter(SheetPlot::isNearEdge)
                .map(SheetPlot::number)
                .collect(Collectors.joining(", "));
        if (!set.plots().isEmpty()) {
            html.element(
                    "p",
                    near.isEmpty()
                            ? "No plot was found near an edge on the map."
                            : "Near an edge on the map: " + near + ". The line on the ground decides, not the map.");
        }
        return html.raw("</section>\n").toString();
    }

    private static void list(Html html, String tag, List<String> items) {
        html.raw("<" + tag + ">\n");
        items.forEach(item -> html.element("li", item));
        html.raw("</" + tag + ">\n");
    }

    private static String heading(Boundary boundary) {
        return switch (boundary) {
            case NOT_STATED -> "The design does not say what to do";
            case IGNORED -> "The line is ignored";
            case MIRAGE -> "Mirage";
            case WALKTHROUGH -> "Walkthrough";
            case INWARD_SWEEP -> "Sweep inward";
        };
    }

    private static List<String> steps(Boundary boundary, boolean points) {
        String limit = points ? "its limiting distance" : "the radius of the plot";
        return switch (boundary) {
            case NOT_STATED ->
                List.of(
                        "Settle it before the first plot, and write it into the design: [plot] boundary = \"mirage\" or"
                                + " \"walkthrough\".",
                        "Until then tally the trees inside the line once each, and note for each such plot how far its centre"
                                + " is from the line, at right angles.");
            case IGNORED ->
                List.of(
                        "Tally the trees inside the line once each, as on any plot.",
                        "Note each plot that reaches over the line, and how far its centre is from it.");
            case MIRAGE ->
                List.of(
                        "Tally the plot from its centre as ever: trees inside the line only.",
                        "Measure the level distance from the centre to the line, at right angles to it.",
                        "Go on over the line by the same distance, in the same direction: there stands the mirage centre.",
                        "From there tally again every tree inside the line that stands within " + limit
                                + ". A tree found from both centres gets a 2 in \"times at edge\".",
                        "Near a corner do so for each of the two lines, and once more from the image beyond the corner: as far"
                                + " over both lines. Write for each tree from how many centres it was found.",
                        "Where the mirage centre cannot be reached, work from the line with taped distances and right angles, or"
                                + " note the plot. Do not change to another way on some plots.");
            case WALKTHROUGH ->
                List.of(
                        "Tally the plot from its centre as ever: trees inside the line only.",
                        "For each tree that is in and stands near the line: walk from the centre through the tree, and beyond it"
                                + " as far again.",
                        "Does that end outside the line? Then the tree gets a 2 in \"times at edge\". Else it counts once.",
                        "In doubt tape it: the level distance from centre to tree, twice, along one bearing.");
            case INWARD_SWEEP ->
                List.of(
                        "Where the plot reaches over one line, tally the half that looks inward, parted parallel to the line, and"
                                + " write 2 in \"times at edge\" for the whole plot.",
                        "Where it reaches over two lines at a corner, tally the quarter that looks inward, and write 4.",
                        "This way is biased and serves to go on with an old tally; a new one is better done by mirage or"
                                + " walkthrough.");
        };
    }
}
