package quadmean.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quadmean.design.EquationLibrary.Entry;
import quadmean.model.BiomassSpec;
import quadmean.model.EquationSpec;
import quadmean.model.ValidRange;
import quadmean.model.VolumeSpec;
import quadmean.units.Unit;

/** The equations of the library in plain text: a heading for what several share, and a line for each to paste. */
final class EquationList {
    private EquationList() {}

    static List<String> of(List<Entry> entries) {
        Map<List<String>, List<Entry>> byHeading = new LinkedHashMap<>();
        entries.forEach(e ->
                byHeading.computeIfAbsent(heading(e), h -> new ArrayList<>()).add(e));
        List<String> lines = new ArrayList<>();
        byHeading.forEach((heading, under) -> {
            lines.addAll(heading);
            int widest = under.stream().mapToInt(e -> e.name().length()).max().orElse(0);
            under.forEach(e -> lines.add(line(e, widest)));
            lines.add("");
        });
        return lines;
    }

    private static List<String> heading(Entry e) {
        EquationSpec equation = e.equation();
        return List.of(
                "# " + e.gives() + "; " + e.region(),
                "# " + what(equation),
                "# " + equation.provenance().standing().label() + ": "
                        + equation.provenance().source());
    }

    private static String what(EquationSpec equation) {
        if (equation instanceof VolumeSpec v) {
            String log =
                    v.form().isLogarithmic() ? ", log to base " + v.logBase().id() : "";
            return "[" + (v.isBoardFeet() ? "board_feet" : "volume") + ".CODE]  "
                    + v.form().id() + ": " + v.form().formula() + "; " + v.unitsText() + log;
        }
        BiomassSpec b = (BiomassSpec) equation;
        return "[biomass.CODE]  " + b.form().id() + ": " + b.form().formula() + "; d cm, dry kg";
    }

    private static String line(Entry e, int widest) {
        String name = String.format(Locale.ROOT, "library = %-" + (widest + 2) + "s", '"' + e.name() + '"');
        return name + "  # " + e.species() + "; " + sizes(e.equation());
    }

    private static String sizes(EquationSpec equation) {
        Unit dbh = equation instanceof VolumeSpec v ? v.dbhUnit() : Unit.CENTIMETRE;
        Unit height = equation instanceof VolumeSpec v ? v.heightUnit() : Unit.METRE;
        ValidRange range = equation.range();
        String text = limits("dbh", range.minDbhCm(), range.maxDbhCm(), Unit.CENTIMETRE, dbh)
                + limits("height", range.minHeightM(), range.maxHeightM(), Unit.METRE, height);
        return text.isEmpty() ? "sizes not stated" : text.substring(2);
    }

    private static String limits(String what, double min, double max, Unit from, Unit to) {
        String low = Double.isNaN(min) ? "" : " from " + plain(from.convert(min, to));
        String high = Double.isNaN(max) ? "" : " to " + plain(from.convert(max, to));
        return low.isEmpty() && high.isEmpty() ? "" : ", " + what + low + high + " " + to.symbol();
    }

    /** Without the dirt that conversion leaves in the last digits. */
    private static String plain(double value) {
        return Figures.plain(Math.round(value * 1e6) / 1e6);
    }
}
