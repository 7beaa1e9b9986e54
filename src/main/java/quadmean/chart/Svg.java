package quadmean.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How texts and numbers stand in SVG. */
final class Svg {
    /** Nearer to a half than this, the digits decide which way a number is cut. */
    private static final double NEAR_HALF = 1e-6;

    private static final double LARGEST = 1e9;

    private Svg() {}

    /** Text as it stands in an element; control characters have no place there. */
    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F]", "\uFFFD");
    }

    /** A number cut to a hundredth, halves away from zero, without zeros at its end. */
    static String number(double value) {
        double hundredths = Math.abs(value) * 100;
        double rest = hundredths - Math.floor(hundredths);
        if (hundredths > LARGEST || Math.abs(rest - 0.5) < NEAR_HALF) {
            BigDecimal cut = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
            return cut.signum() == 0 ? "0" : cut.stripTrailingZeros().toPlainString();
        }
        return cut(value < 0, Math.round(hundredths));
    }

    private static String cut(boolean isNegative, long hundredths) {
        if (hundredths == 0) {
            return "0";
        }
        long decimals = hundredths % 100;
        String tail =
                decimals == 0 ? "" : decimals % 10 == 0 ? "." + decimals / 10 : (decimals < 10 ? ".0" : ".") + decimals;
        return (isNegative ? "-" : "") + hundredths / 100 + tail;
    }
}
