package quadmean.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A number with its unit, as typed: {@code 66ft}, {@code 20m}, {@code 20%}, {@code 11deg}.
 *
 * @param value the number
 * @param unit the unit as typed, empty where there is none
 */
record Amount(double value, String unit) {
    private static final Pattern FORM = Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+))\\s*([a-zA-Z%°].*)?");

    /** Reads an amount from the command line. */
    static final class Converter implements ITypeConverter<Amount> {
        @Override
        public Amount convert(String text) {
            Matcher form = FORM.matcher(text.strip());
            if (!form.matches()) {
                throw new TypeConversionException(
                        "'" + text
                                + "' is no amount; write a number with a decimal point and its unit, such as 66ft, 20.5m or 20%");
            }
            return new Amount(Double.parseDouble(form.group(1)), form.group(2) == null ? "" : form.group(2));
        }
    }

    /** Reads a plain number from the command line. */
    static final class NumberConverter implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            Matcher form = FORM.matcher(text.strip());
            if (!form.matches() || form.group(2) != null) {
                throw new TypeConversionException(
                        "'" + text + "' is no plain number; write it with a decimal point and no unit, such as -8.5");
            }
            return Double.parseDouble(form.group(1));
        }
    }

    /** The amount as typed. */
    @Override
    public String toString() {
        String number = value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
        return number + unit;
    }
}
