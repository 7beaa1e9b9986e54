package quadmean.chart;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import quadmean.cruise.CruiseResult;
import quadmean.model.Standing;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.UnitSystem;

/** Words that charts and report share. */
public final class Wording {
    private Wording() {}

    /** A confidence level in (0, 1) as a percentage: {@code 95 %}. */
    public static String confidence(double level) {
        return percent(100 * level);
    }

    /** A percentage as given, its sign held to it: {@code 10 %}. */
    public static String percent(double value) {
        return plain(value) + "\u00a0%";
    }

    /** A number in plain digits without trailing zeros, to eight significant digits. */
    public static String plain(double value) {
        BigDecimal rounded = new BigDecimal(value, new MathContext(8)).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** The basis on which an attribute is compared between species or strata. */
    public static Basis comparable(Attribute attribute) {
        return attribute == Attribute.QUADRATIC_MEAN_DIAMETER ? Basis.RATIO : Basis.PER_AREA;
    }

    /** An attribute on that basis, in words: {@code volume per acre}. */
    public static String perArea(Attribute attribute, UnitSystem units) {
        String area = units == UnitSystem.METRIC ? " per hectare" : " per acre";
        return attribute.label() + (comparable(attribute) == Basis.PER_AREA ? area : "");
    }

    /** An axis title: the attribute with its unit. */
    static String axis(Attribute attribute, UnitSystem units) {
        return capital(attribute.label()) + " ("
                + attribute.unit(comparable(attribute), units).label() + ")";
    }

    /** The same words with a capital letter. */
    public static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /**
     * How far the volume equations behind an estimate of volume can be trusted, worst first.
     *
     * @param species species code, or {@code *} for all
     * @return for instance {@code from memory}; empty if every equation is verified
     */
    public static String standing(CruiseResult result, String species) {
        List<Standing> doubtful = Stream.of(Standing.INVENTED, Standing.FROM_MEMORY)
                .filter(s -> result.equations().entrySet().stream()
                        .anyMatch(e -> (species.equals("*") || e.getKey().equals(species))
                                && e.getValue().standing() == s))
                .toList();
        return String.join(", ", doubtful.stream().map(Standing::label).toList());
    }

    /** A remark in brackets for titles that show volume; empty where there is nothing to remark. */
    static String volumeRemark(CruiseResult result) {
        String standing = standing(result, "*");
        return result.design().targetAttribute() != Attribute.VOLUME || standing.isEmpty()
                ? ""
                : " Volume equations: " + standing + ".";
    }
}
