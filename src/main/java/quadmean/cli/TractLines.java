package quadmean.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quadmean.design.Design;
import quadmean.layout.StratumArea;
import quadmean.layout.Tract;
import quadmean.units.Unit;

/** What the map of a tract says of its areas, as lines for the console. */
final class TractLines {
    private TractLines() {}

    /** A line for the whole tract, one for each stratum, and what a reader should know. */
    static List<String> of(Design design, Tract tract) {
        List<String> lines = new ArrayList<>();
        lines.add("Boundary: " + area(design, tract.whole(), "the whole tract"));
        if (tract.areas().size() > 1) {
            tract.areas().forEach(a -> lines.add("  " + area(design, a, "stratum " + a.code())));
        }
        tract.notes().forEach(n -> lines.add("  " + n));
        return lines;
    }

    private static String difference(double percent) {
        return Math.abs(percent) < 0.005 ? "alike" : String.format(Locale.ROOT, "%+.2f %%", percent);
    }

    private static String area(Design design, StratumArea a, String name) {
        Unit unit = design.units().area();
        return String.format(
                Locale.ROOT,
                "%s %.2f %s on the map, %.2f %s in the design (%s)",
                name,
                Unit.HECTARE.convert(a.mapHa(), unit),
                unit.symbol(),
                Unit.HECTARE.convert(a.designHa(), unit),
                unit.symbol(),
                difference(a.differencePercent()));
    }
}
