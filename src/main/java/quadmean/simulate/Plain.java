package quadmean.simulate;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as people write them in a sentence: no zeros at the end, no exponent. */
final class Plain {
    private Plain() {}

    /** A finite number cut to so many significant digits. */
    static String of(double value, int digits) {
        BigDecimal cut = BigDecimal.valueOf(value).round(new MathContext(digits));
        return cut.signum() == 0 ? "0" : cut.stripTrailingZeros().toPlainString();
    }
}
