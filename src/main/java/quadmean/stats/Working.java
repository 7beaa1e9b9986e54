package quadmean.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Keeps the numbers on the way from data to an estimate, for whoever wants to see them. Estimators hand in what they work with; a
 * silent one forgets it.
 */
public final class Working {
    /** What stands in a formula for the terms of a sum. */
    public static final String SUM = "{sum}";

    /** What stands in a formula for the squares of the terms, added up. */
    public static final String SQUARES = "{squares}";

    private static final Working SILENT = new Working(new ArrayList<>(), false, Kind.VALUES);

    private final List<Step> steps;
    private final boolean isKept;
    private final Kind kind;

    private Working(List<Step> steps, boolean isKept, Kind kind) {
        this.steps = steps;
        this.isKept = isKept;
        this.kind = kind;
    }

    /** What the values handed in are. */
    private enum Kind {
        VALUES,
        TOTALS,
        FACTORS,
        NUMBERS
    }

    /** What a number is measured in, so that it can be shown in other units. */
    public enum Scale {
        /** No unit of its own. */
        NUMBER,
        /** As the values, over something else. */
        FACTOR,
        /** As the values. */
        VALUE,
        /** As their squares. */
        SQUARE,
        /** An area (ha). */
        AREA
    }

    /**
     * One step.
     *
     * @param what the number in words; alone it is a heading
     * @param symbol its letter, for the formulas of later steps; empty for a heading
     * @param formula how it follows from earlier numbers, their letters in braces; empty where it is given
     * @param terms terms of a sum in the formula
     * @param value the number
     * @param scale what it is measured in
     * @param isOfTotals whether values here are totals, not per hectare
     */
    public record Step(
            String what,
            String symbol,
            String formula,
            List<Double> terms,
            double value,
            Scale scale,
            boolean isOfTotals) {
        public Step {
            terms = List.copyOf(terms);
        }

        /** Whether it only says what follows. */
        public boolean isHeading() {
            return symbol.isEmpty();
        }
    }

    /** One that forgets. */
    public static Working silent() {
        return SILENT;
    }

    /** One that keeps. */
    public static Working kept() {
        return new Working(new ArrayList<>(), true, Kind.VALUES);
    }

    /** Whether anybody asks for the steps; those of many parts take longer than what they explain. */
    boolean isKept() {
        return isKept;
    }

    /** The same list of steps, for values that are totals. */
    public Working ofTotals() {
        return new Working(steps, isKept, Kind.TOTALS);
    }

    /** The same list of steps, for values over something else, such as ratios. */
    public Working ofFactors() {
        return new Working(steps, isKept, Kind.FACTORS);
    }

    /** The same list of steps, for values that have a unit of their own. */
    public Working ofNumbers() {
        return new Working(steps, isKept, Kind.NUMBERS);
    }

    /** The steps so far. */
    public List<Step> steps() {
        return List.copyOf(steps);
    }

    /** Says what follows. */
    public void heading(String what) {
        add(what, "", "", new double[0], Double.NaN, Scale.NUMBER);
    }

    /** A number that comes in from outside or is not taken apart. */
    public void given(String symbol, String what, double value, Scale scale) {
        add(what, symbol, "", new double[0], value, scale);
    }

    /** A number that comes in from outside and has no unit of the values. */
    public void number(String symbol, String what, double value) {
        given(symbol, what, value, Scale.NUMBER);
    }

    /** A number that follows from earlier ones. */
    public void step(String symbol, String what, String formula, double value, Scale scale) {
        add(what, symbol, formula, new double[0], value, scale);
    }

    /** A number that follows from a sum of terms, or of their squares. */
    public void sum(String symbol, String what, String formula, double[] terms, double value, Scale scale) {
        add(what, symbol, formula, terms, value, scale);
    }

    /** A plain mean of values, and their number. */
    void mean(String symbol, String what, String size, double[] values, double value, Scale scale) {
        number(size, "number of them", values.length);
        sum(symbol, what, "(" + SUM + ") / {" + size + "}", values, value, scale);
    }

    /** How much of a variance is left by the finite population correction, as a factor of a formula. */
    String unseen(StratumSample sample, String size) {
        if (sample.populationUnits() == Double.POSITIVE_INFINITY) {
            return "";
        }
        String all = size.replace('n', 'N');
        number(all, "units in the population, for the finite population correction", sample.populationUnits());
        return sample.unseen() > 0 ? " × (1 - {" + size + "} / {" + all + "})" : " × 0";
    }

    /** The standard error of a variance v, and its degrees of freedom. */
    public void error(MeanEstimate e, String degrees) {
        if (!Double.isFinite(e.se())) {
            return;
        }
        step("se", "standard error", "√({v})", e.se(), Scale.VALUE);
        if (degrees.isEmpty()) {
            number("df", "degrees of freedom", e.df());
        } else {
            step("df", "degrees of freedom", degrees, e.df(), Scale.NUMBER);
        }
    }

    private Scale scale(Scale scale) {
        if (kind == Kind.NUMBERS) {
            return Scale.NUMBER;
        }
        return kind == Kind.FACTORS && scale == Scale.VALUE ? Scale.FACTOR : scale;
    }

    private void add(String what, String symbol, String formula, double[] terms, double value, Scale scale) {
        if (isKept) {
            List<Double> kept = Arrays.stream(terms).boxed().toList();
            steps.add(new Step(what, symbol, formula, kept, value, scale(scale), kind == Kind.TOTALS));
        }
    }
}
