package quadmean.volume;

import java.util.Locale;
import quadmean.units.Unit;

/** Sizes in words. */
final class Amounts {
    private Amounts() {}

    /** A size in another unit, to four digits: {@code 0.3 m}. */
    static String text(double value, Unit from, Unit to) {
        String digits = String.format(Locale.ROOT, "%.4f", from.convert(value, to));
        return digits.replaceAll("0+$", "").replaceAll("\\.$", "") + " " + to.symbol();
    }
}
