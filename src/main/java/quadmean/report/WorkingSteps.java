package quadmean.report;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import quadmean.stats.Working;
import quadmean.units.Unit;

/** The steps of an estimator as lines: the formula in letters, the numbers put in, and what comes out. */
final class WorkingSteps {
    private static final Pattern LETTER = Pattern.compile("\\{([^}]+)\\}");

    private final DoubleUnaryOperator shown;
    private final Unit area;
    private final Unit perArea;
    private final Unit total;
    private final Steps steps;
    private final Map<String, Double> known = new HashMap<>();

    /**
     * Lines for steps.
     *
     * @param shown turns a value per hectare into the one shown
     * @param area unit of areas
     * @param perArea unit of values shown
     * @param total unit of totals shown
     */
    WorkingSteps(DoubleUnaryOperator shown, Unit area, Unit perArea, Unit total, Steps steps) {
        this.shown = shown;
        this.area = area;
        this.perArea = perArea;
        this.total = total;
        this.steps = steps;
    }

    void write(Iterable<Working.Step> all) {
        all.forEach(this::write);
    }

    private void write(Working.Step step) {
        if (step.isHeading()) {
            steps.say(step.what());
            return;
        }
        double value = converted(step.value(), step);
        String what = step.what().equals(step.symbol()) ? step.symbol() : step.what() + ", " + step.symbol();
        String unit = unit(step);
        if (step.formula().isEmpty()) {
            steps.say("  " + what + ": " + Steps.number(value) + (unit.isEmpty() ? "" : " " + unit));
        } else {
            steps.step(what + " = " + inWords(step.formula()), inNumbers(step), value, unit);
        }
        known.put(step.symbol(), value);
    }

    private static String inWords(String formula) {
        String words = formula.replace(Working.SUM, "sum of them").replace(Working.SQUARES, "sum of squares");
        return words.replaceAll("[{}]", "");
    }

    private String inNumbers(Working.Step step) {
        String terms = step.terms().stream().map(t -> Steps.term(term(t, step))).collect(Collectors.joining(" + "));
        String squares = step.terms().stream()
                .map(t -> "(" + Steps.number(term(t, step)) + ")²")
                .collect(Collectors.joining(" + "));
        String formula = step.formula().replace(Working.SUM, terms).replace(Working.SQUARES, squares);
        Matcher letter = LETTER.matcher(formula);
        return letter.replaceAll(m -> Steps.term(letter(m.group(1))));
    }

    private double letter(String symbol) {
        Double value = known.get(symbol);
        if (value == null) {
            throw new IllegalStateException("no number stands for " + symbol);
        }
        return value;
    }

    /** A term of a sum is of the values' unit even where the squares of the terms are added. */
    private double term(double value, Working.Step step) {
        return step.scale() == Working.Scale.NUMBER ? value : value * factor(step);
    }

    private double converted(double value, Working.Step step) {
        return switch (step.scale()) {
            case NUMBER -> value;
            case AREA -> Unit.HECTARE.convert(value, area);
            case FACTOR, VALUE -> value * factor(step);
            case SQUARE -> value * factor(step) * factor(step);
        };
    }

    private double factor(Working.Step step) {
        double each = shown.applyAsDouble(1);
        return step.isOfTotals() ? each * Unit.HECTARE.convert(1, area) : each;
    }

    private String unit(Working.Step step) {
        return switch (step.scale()) {
            case AREA -> area.label();
            case VALUE -> (step.isOfTotals() ? total : perArea).label();
            default -> "";
        };
    }
}
