package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.layout.FieldTables;
import quadmean.layout.SheetRoute;
import quadmean.layout.SheetSet;
import quadmean.model.PlotDesign;

/** The first sheet: which job this is, and what can hurt people in it. */
final class SheetCover {
    private static final List<String> LINES = List.of(
            "Check-in with",
            "At what times",
            "Telephone or channel",
            "If a time is missed",
            "Nearest road and gate",
            "Nearest help");
    private static final int HASH_DIGITS = 12;

    private SheetCover() {}

    static String markup(Design design, SheetSet set, FieldTables tables) {
        Html html = new Html().raw("<section class=\"sheet\" id=\"cover\">\n");
        html.element("p", "kind", "Field sheets").element("h1", design.name());
        html.raw("<div class=\"box\">\n");
        html.element(
                "p",
                "Local safety codes, your employer's rules and licensed practice come first, before anything on these"
                        + " sheets. What comes of them is an estimate: no appraisal, no scale, no survey of a boundary.");
        html.raw("</div>\n<dl>\n");
        facts(html, design, set, tables);
        html.raw("</dl>\n");
        if (set.plots().isEmpty()) { // else they stand with the plots
            set.remarks().forEach(r -> html.element("p", "remark", r));
        }
        html.raw(Cautions.forCrew());
        html.raw("<div class=\"lines\">");
        LINES.forEach(line -> html.element("span", line + ":"));
        html.raw("</div>\n");
        return html.raw("</section>\n").toString();
    }

    private static void facts(Html html, Design design, SheetSet set, FieldTables tables) {
        fact(html, "Place", design.notes().place());
        fact(html, "Crew", design.notes().crew());
        fact(html, "Date", design.date());
        fact(html, "Plots", plots(set));
        fact(html, "Kind of plot", kind(design, tables));
        fact(html, "Trees tallied", smallest(design));
        fact(html, "Selection", Wording.capital(design.selection().id().replace('_', ' ')));
        fact(html, "Days", days(set));
        fact(html, "Declination", declination(design));
        fact(html, "Seed", Long.toString(design.seed()));
        fact(
                html,
                "Design",
                design.file().getFileName() + ", SHA-256 "
                        + design.sha256()
                                .substring(
                                        0, Math.min(HASH_DIGITS, design.sha256().length())));
    }

    private static void fact(Html html, String name, String value) {
        if (!value.isEmpty()) {
            html.element("dt", name).element("dd", value);
        }
    }

    private static String plots(SheetSet set) {
        if (set.plots().isEmpty()) {
            return set.asked().isPresent() ? set.asked().getAsInt() + " asked for, none laid out here" : "";
        }
        long near = set.plots().stream().filter(p -> p.isNearEdge()).count();
        String asked = set.asked().isPresent() ? " (asked for: " + set.asked().getAsInt() + ")" : "";
        return set.plots().size() + " laid out" + asked + ", " + near + " of them near an edge";
    }

    private static String days(SheetSet set) {
        List<SheetRoute.Day> days = set.route().days();
        if (days.isEmpty()) {
            return "";
        }
        double hours = days.stream().mapToDouble(SheetRoute.Day::hours).sum();
        return String.format(Locale.ROOT, "%d, %.1f hours in all", days.size(), hours);
    }

    /** What a needle reads is the true bearing less the declination, east positive (by definition). */
    private static String declination(Design design) {
        OptionalDouble ofMap =
                design.layout().map(l -> l.walking().declinationDegrees()).orElse(OptionalDouble.empty());
        OptionalDouble set = design.notes().declinationDegrees();
        if (ofMap.isPresent()) {
            return degrees(ofMap.getAsDouble()) + ": compass bearings here are for a compass without a declination set";
        }
        return set.isPresent()
                ? degrees(set.getAsDouble()) + ", set on the compass: bearings here are from true north"
                : "not stated: bearings here are from true north; set the compass or correct them";
    }

    private static String degrees(double declination) {
        return Wording.plain(Math.abs(declination)) + "° " + (declination < 0 ? "west" : "east");
    }

    private static String smallest(Design design) {
        double cm = design.sizes().smallestCm();
        SheetLengths lengths = new SheetLengths(design.units());
        return cm > 0 ? "from a dbh of " + lengths.dbh(cm) + " " + lengths.dbhUnit() + " up" : "of every dbh";
    }

    private static String kind(Design design, FieldTables tables) {
        SheetLengths lengths = new SheetLengths(design.units());
        List<String> words = new ArrayList<>();
        if (design.plot() instanceof PlotDesign.Point point) {
            words.add("Points, basal area factor " + lengths.factor(point.basalAreaFactor()) + "."
                    + PlotWords.sweep(point.sweep()));
        } else if (design.plot() instanceof PlotDesign.Strip strip) {
            words.add("Strips, " + PlotWords.size(strip, design.units()) + ", by horizontal distances.");
        } else if (design.plot() instanceof PlotDesign.Complete) {
            words.add("Complete tally: every tree of each part of the stand, and none twice.");
        }
        for (FieldTables.Circle circle : tables.circles()) {
            String from = circle.minDbhCm() > 0
                    ? "dbh from " + lengths.dbh(circle.minDbhCm()) + " " + lengths.dbhUnit() + ": "
                    : "";
            words.add(from + "circle of " + lengths.withUnit(circle.radiusM(), 2) + " horizontal radius.");
        }
        if (tables.circles().size() > 1) {
            words.add("A tree is tallied on the circle of its dbh and on no other.");
        }
        return Wording.capital(String.join(" ", words))
                + PlotWords.measuring(design.plot().measuring());
    }
}
