package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.chart.Wording;
import quadmean.model.FelledData;
import quadmean.model.ValidRange;
import quadmean.stats.LinearFit;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.VolumeFit;
import quadmean.volume.VolumeFitGroup;

/** Fitted volume equations in words, the same on the page, the console and in files. */
final class VolumeFitWords {
    private VolumeFitWords() {}

    static String name(VolumeFitGroup group) {
        return group.code().equals(VolumeFitGroup.ALL) ? "All trees" : group.code();
    }

    /** The sizes of the trees: {@code dbh 8.3 to 20.6 in, height 63 to 87 ft}. */
    static String range(VolumeFitGroup group, UnitSystem units) {
        ValidRange range = group.range();
        return "dbh " + span(range.minDbhCm(), range.maxDbhCm(), Unit.CENTIMETRE, units.diameter()) + ", height "
                + span(range.minHeightM(), range.maxHeightM(), Unit.METRE, units.length());
    }

    private static String span(double low, double high, Unit inside, Unit unit) {
        return low(low, inside, unit) + " to " + high(high, inside, unit) + " " + unit.symbol();
    }

    /** The same as keys of a design. */
    static List<String> limits(VolumeFitGroup group, UnitSystem units) {
        ValidRange range = group.range();
        return List.of(
                "min_dbh = " + low(range.minDbhCm(), Unit.CENTIMETRE, units.diameter()),
                "max_dbh = " + high(range.maxDbhCm(), Unit.CENTIMETRE, units.diameter()),
                "min_height = " + low(range.minHeightM(), Unit.METRE, units.length()),
                "max_height = " + high(range.maxHeightM(), Unit.METRE, units.length()));
    }

    /** In hundredths, rounded so that no tree of the data falls outside. */
    private static String low(double value, Unit inside, Unit unit) {
        return Wording.plain(Math.floor(inside.convert(value, unit) * 100 + 1e-6) / 100);
    }

    private static String high(double value, Unit inside, Unit unit) {
        return Wording.plain(Math.ceil(inside.convert(value, unit) * 100 - 1e-6) / 100);
    }

    /** Where an equation comes from, for a design. */
    static String source(FelledData data, VolumeFitGroup group, UnitSystem units) {
        return "fitted to " + Headline.count(group.trees().size(), "felled tree") + " in " + data.file() + ", "
                + range(group, units) + (data.volumes().isEmpty() ? "" : "; volumes " + data.volumes());
    }

    /** The coefficients by name, in all digits that matter: {@code a = -0.029706963, b = 0.0021019567}. */
    static String coefficients(VolumeFit fit) {
        LinearFit regression = fit.fit();
        if (regression == null || !regression.hasFullRank()) {
            return Rounding.UNKNOWN;
        }
        List<String> parts = new ArrayList<>();
        for (int k = 0; k < regression.coefficients().length; k++) {
            parts.add(fit.form().coefficients().get(k) + "\u00a0=\u00a0"
                    + Wording.plain(regression.coefficients()[k]));
        }
        return String.join(", ", parts);
    }

    /** A volume with its unit, to three digits. */
    static String volume(double cubicMetres, UnitSystem units) {
        double value = Unit.CUBIC_METRE.convert(cubicMetres, units.volume());
        return Rounding.significant(value, 3).text(value) + " " + units.volume().label();
    }

    /** What residual standard deviations are of. */
    static String scale(VolumeFit fit) {
        return switch (fit.form()) {
            case COMBINED_VARIABLE, FORM_FACTOR ->
                switch (fit.weights()) {
                    case EQUAL -> fit.units().volume().label();
                    case INVERSE_SQUARE -> fit.units().volume().label() + " per unit of D²H";
                };
            case SCHUMACHER_HALL, LOG_POLYNOMIAL -> "of ln V";
            case HONER -> "of D²/V";
        };
    }

    /** What to mind of a group before its equation is used. */
    static List<String> warnings(VolumeFitGroup group) {
        List<String> warnings = new ArrayList<>();
        if (group.best().isEmpty()) {
            warnings.add("no form gives an equation");
        } else if (group.hasFewTrees()) {
            warnings.add("only " + group.trees().size() + " trees, under " + VolumeFitGroup.FEW_TREES
                    + " (common practice, no source): a makeshift");
        }
        group.best().map(VolumeFit::remark).filter(r -> !r.isEmpty()).ifPresent(warnings::add);
        return warnings;
    }
}
