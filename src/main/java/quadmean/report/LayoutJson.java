package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.TreeMap;
import quadmean.design.Design;
import quadmean.design.LayoutSettings;
import quadmean.layout.FieldPlan;
import quadmean.layout.LaidPlot;
import quadmean.layout.Layout;
import quadmean.layout.SheetRoute;
import quadmean.layout.SheetSet;

/** The node {@code layout} of {@code plan.json}: what was laid out and how it is walked, lengths in metres. */
final class LayoutJson {
    private LayoutJson() {}

    /** The node; {@code field} must have been laid out. */
    static ObjectNode of(Design design, FieldPlan field) {
        LayoutSettings settings = design.layout().orElseThrow();
        FieldPlan.Work work = field.work().orElseThrow();
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("seed", design.seed());
        root.put("pattern", settings.pattern().id());
        root.put("over", settings.extent().id());
        root.put("bearingDeg", settings.bearingDegrees());
        numbers(root, settings, work.layout());
        grounds(root.putArray("grounds"), work.layout());
        buffer(root, settings);
        ArrayNode leftOut = root.putArray("leftOut");
        work.layout()
                .leftOut()
                .forEach(l -> leftOut.addObject().put("cluster", l.cluster()).put("plot", l.plot()));
        SheetSet set = field.set();
        if (set != null) {
            walk(root.putObject("walk"), settings, work, set.route());
        }
        ArrayNode notes = root.putArray("notes");
        field.notes().forEach(notes::add);
        return root;
    }

    private static void numbers(ObjectNode root, LayoutSettings settings, Layout layout) {
        settings.cluster().ifPresent(c -> {
            ObjectNode cluster = root.putObject("cluster");
            cluster.put("plots", c.plots())
                    .put("spacingM", c.spacingM())
                    .put("shape", c.shape().id());
        });
        root.put("asks", settings.cluster().isPresent() ? "clusters" : "plots");
        if (layout.asked() > 0) {
            root.put("asked", layout.asked());
        } else {
            root.putNull("asked");
            root.put("askedReason", "the number follows from the spacing");
        }
        root.put("plots", layout.plots().size());
        Map<String, Integer> byStratum = new TreeMap<>();
        layout.plots().forEach((LaidPlot p) -> byStratum.merge(p.stratum(), 1, Integer::sum));
        ObjectNode strata = root.putObject("plotsByStratum");
        byStratum.forEach(strata::put);
    }

    private static void grounds(ArrayNode grounds, Layout layout) {
        for (Layout.Ground g : layout.grounds()) {
            ObjectNode node = grounds.addObject().put("stratum", g.stratum());
            if (layout.asked() > 0) {
                node.put("asked", g.asked());
            }
            node.put("plots", g.laid());
            JsonNumbers.put(node, "spacingM", g.alongM());
            JsonNumbers.put(node, "rowSpacingM", g.acrossM());
            node.put("bufferPercent", g.bufferPercent());
        }
    }

    private static void buffer(ObjectNode root, LayoutSettings settings) {
        root.put("bufferM", settings.bufferM());
        root.put(
                "bufferBias",
                settings.bufferM() == 0
                        ? "none: plots lie wherever they fall"
                        : "what stands in the buffer is in no estimate; where edges differ from the inside the estimate is"
                                + " biased");
    }

    private static void walk(ObjectNode node, LayoutSettings settings, FieldPlan.Work work, SheetRoute route) {
        node.put("lengthM", work.route().lengthM());
        node.put("serpentineM", work.route().serpentineM());
        settings.walking().declinationDegrees().ifPresent(d -> node.put("declinationDeg", d));
        settings.walking().slopes().mean().ifPresent(s -> node.put("meanSlopePercent", s));
        if (!settings.walking().slopes().byStratum().isEmpty()) {
            ObjectNode slopes = node.putObject("slopePercentByStratum");
            new TreeMap<>(settings.walking().slopes().byStratum()).forEach(slopes::put);
        }
        node.put("legsAround", legs(route, SheetRoute.Way.AROUND));
        node.put("legsOutside", legs(route, SheetRoute.Way.OUTSIDE));
        ArrayNode days = node.putArray("days");
        for (SheetRoute.Day day : route.days()) {
            ObjectNode d = days.addObject().put("day", day.day()).put("plots", day.plots());
            d.put("walkM", day.walkM()).put("hours", day.hours());
        }
    }

    private static long legs(SheetRoute route, SheetRoute.Way way) {
        return route.legs().stream().filter(l -> l.way() == way).count();
    }
}
