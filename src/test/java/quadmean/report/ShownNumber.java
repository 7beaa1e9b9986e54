package quadmean.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as a page shows it.
 *
 * @param text digits as written, with commas between thousands
 * @param percent whether a percent sign follows
 */
record ShownNumber(String text, boolean percent) {
    private static final Pattern NUMBER = Pattern.compile(
            "(?<![\\p{L}\\d.,_])-?\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?(?:e[-+]\\d+)?([\\u00a0 ]%)?(?![\\p{L}\\d])"
                    + "|(?<![\\p{L}\\d.,_])-?\\d+(?:\\.\\d+)?(?:e[-+]\\d+)?([\\u00a0 ]%)?(?![\\p{L}\\d])");

    /** All numbers of a text; digits inside of words, such as m3 or 16x, are no numbers. */
    static List<ShownNumber> in(String text) {
        List<ShownNumber> found = new ArrayList<>();
        Matcher m = NUMBER.matcher(text);
        while (m.find()) {
            boolean percent = m.group(1) != null || m.group(2) != null;
            found.add(new ShownNumber(m.group().replaceAll("[\\u00a0 %]", ""), percent));
        }
        return found;
    }

    /**
     * Whether a value, cut by rounding halves up, is shown like this: to the decimals written or, for a whole number that ends in
     * zeros, to any place down from the first of them. A share may be shown in percent.
     */
    boolean shows(double value) {
        return Double.isFinite(value) && (isRounded(value) || (percent && isRounded(100 * value)));
    }

    private boolean isRounded(double value) {
        BigDecimal shown = new BigDecimal(text.replace(",", ""));
        int most = shown.scale() > 0 ? shown.scale() : 0;
        int least = shown.scale() > 0 || shown.signum() == 0
                ? most
                : shown.stripTrailingZeros().scale();
        if (text.contains("e")) {
            most = shown.scale();
            least = most;
        }
        for (int scale = most; scale >= least; scale--) {
            if (new BigDecimal(value).setScale(scale, RoundingMode.HALF_UP).compareTo(shown) == 0) {
                return true;
            }
        }
        return false;
    }
}
