package quadmean.volume;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quadmean.model.CubicRule;
import quadmean.model.Scaling;
import quadmean.model.Scaling.Figures;
import quadmean.units.Unit;

/** Scaling conventions in words. */
final class ScaleWords {
    private static final String NO_SOURCE = " (common practice, no source).";

    private ScaleWords() {}

    static List<String> of(Scaling scaling, CubicRule cubic, BoardFootRule rule) {
        List<String> words = new ArrayList<>(rule.statement());
        words.add(diameters(scaling));
        words.add(lengths(scaling));
        words.add(figures(scaling.figures(), rule));
        words.add(pieces(scaling));
        words.add("Cubic volume of logs by " + cubic.label() + ", " + cubic.formula()
                + ", from sections inside bark, diameters and lengths unrounded, without trim.");
        return List.copyOf(words);
    }

    private static String diameters(Scaling scaling) {
        return switch (scaling.diameters()) {
            case NEAREST_INCH ->
                "For board feet small-end diameters are rounded to the nearest inch, halves up" + NO_SOURCE;
            case INCH_DOWN -> "For board feet small-end diameters are rounded down to whole inches" + NO_SOURCE;
            case AS_IS ->
                "For board feet small-end diameters are not rounded; a table of whole inches is read at the"
                        + " inch below.";
        };
    }

    private static String lengths(Scaling scaling) {
        return switch (scaling.lengths()) {
            case EVEN_FOOT_DOWN -> "For board feet lengths without trim are rounded down to even feet" + NO_SOURCE;
            case FOOT_DOWN -> "For board feet lengths without trim are rounded down to whole feet" + NO_SOURCE;
            case AS_IS -> "For board feet lengths without trim are not rounded.";
        };
    }

    private static String figures(Figures figures, BoardFootRule rule) {
        return figures == Figures.AS_TABLED || rule instanceof DecimalC
                ? "Board feet of each log or piece are rounded " + rule.rounding() + "."
                : "Board feet of each log or piece are not rounded.";
    }

    private static String pieces(Scaling scaling) {
        double longest = Unit.METRE.convert(scaling.longestPieceM(), Unit.FOOT);
        if (longest == Double.POSITIVE_INFINITY) {
            return "Logs of any length are scaled in one piece.";
        }
        String equal = switch (scaling.lengths()) {
            case EVEN_FOOT_DOWN -> "as equal as even feet allow, the longer at the butt";
            case FOOT_DOWN -> "as equal as whole feet allow, the longer at the butt";
            case AS_IS -> "of equal length";
        };
        return String.format(
                Locale.ROOT,
                "Logs of a scaled length over %s ft are scaled in as few pieces as that allows, %s; diameters at the"
                        + " joints lie on the straight line between the ends of the log, measured from the small end,"
                        + " and are treated as small ends are%s",
                Math.round(longest * 100) / 100.0,
                equal,
                NO_SOURCE);
    }
}
