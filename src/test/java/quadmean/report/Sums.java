package quadmean.report;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads arithmetic back from a line of text and works it out, apart from the program. */
final class Sums {
    private static final Pattern STEP = Pattern.compile(": ([0-9.×/+√()² -]+) = (-?[0-9.]+)");

    private final String text;
    private int at;

    private Sums(String text) {
        this.text = text.replace(" ", "");
    }

    /**
     * A line worked out again.
     *
     * @param stated what the line says comes out
     * @param value what comes out
     * @param size the same with every term counted positive: what rounding is measured against
     */
    record Check(double stated, double value, double size) {}

    /** The arithmetic of a line; empty if it has none. */
    static Optional<Check> of(String line) {
        Matcher m = STEP.matcher(line);
        if (!m.find()) {
            return Optional.empty();
        }
        Term n = new Sums(m.group(1)).all();
        return Optional.of(new Check(Double.parseDouble(m.group(2)), n.value, n.size));
    }

    private record Term(double value, double size) {}

    private Term all() {
        Term sum = sum();
        if (at != text.length()) {
            throw new IllegalArgumentException("cannot read " + text + " from place " + at);
        }
        return sum;
    }

    private Term sum() {
        Term a = product();
        while (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
            int sign = text.charAt(at++) == '+' ? 1 : -1;
            Term b = product();
            a = new Term(a.value + sign * b.value, a.size + b.size);
        }
        return a;
    }

    private Term product() {
        Term a = power();
        while (at < text.length() && (text.charAt(at) == '×' || text.charAt(at) == '/')) {
            boolean times = text.charAt(at++) == '×';
            Term b = power();
            a = times
                    ? new Term(a.value * b.value, a.size * b.size)
                    : new Term(a.value / b.value, a.size / Math.abs(b.value));
        }
        return a;
    }

    private Term power() {
        Term a = factor();
        if (at < text.length() && text.charAt(at) == '²') {
            at++;
            return new Term(a.value * a.value, a.size * a.size);
        }
        return a;
    }

    private Term factor() {
        char c = text.charAt(at);
        if (c == '√') {
            at++;
            Term a = factor();
            return new Term(Math.sqrt(a.value), Math.sqrt(a.size));
        }
        if (c == '(') {
            at++;
            Term a = sum();
            at++;
            return a;
        }
        if (c == '-') {
            at++;
            Term a = factor();
            return new Term(-a.value, a.size);
        }
        int from = at;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        double number = Double.parseDouble(text.substring(from, at));
        return new Term(number, number);
    }
}
