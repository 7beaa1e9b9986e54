package quadmean.chart;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quadmean.cruise.WoodUsed;
import quadmean.design.Design;
import quadmean.model.PriceList;
import quadmean.model.Standing;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Quantity;
import quadmean.units.Unit;
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
    static String axis(Design design, Attribute attribute, UnitSystem units) {
        return capital(attribute.label()) + " (" + units(design, attribute, comparable(attribute), units) + ")";
    }

    /** The unit of an attribute as people read it; money in the currency of the price list. */
    public static String units(Design design, Attribute attribute, Basis basis, UnitSystem units) {
        Unit unit = attribute.unit(basis, units);
        return isMoney(unit) ? inCurrency(design, unit) : unit.label();
    }

    /** The same in plain ASCII but for the currency, for tables that programs read. */
    public static String unitSymbol(Design design, Attribute attribute, Basis basis, UnitSystem units) {
        Unit unit = attribute.unit(basis, units);
        return isMoney(unit) ? inCurrency(design, unit) : unit.symbol();
    }

    private static boolean isMoney(Unit unit) {
        return unit.quantity() == Quantity.MONEY || unit.quantity() == Quantity.MONEY_PER_AREA;
    }

    private static String inCurrency(Design design, Unit unit) {
        String sign = Unit.DOLLAR.symbol();
        String currency = design.wood().prices().map(PriceList::currency).orElse(sign);
        return unit.symbol().replace(sign, currency);
    }

    /** The same words with a capital letter. */
    public static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /**
     * How far what stands behind an estimate can be trusted, worst first.
     *
     * @param species species code, or {@code *} for all
     * @return for instance {@code from memory, fitted}; empty if everything is verified
     */
    public static String standing(WoodUsed used, Attribute attribute, String species) {
        List<Standing> found = used.standings(attribute, species).distinct().toList();
        return Stream.of(Standing.INVENTED, Standing.FROM_MEMORY, Standing.FITTED)
                .filter(found::contains)
                .map(Standing::label)
                .collect(Collectors.joining(", "));
    }

    /** What the words of {@link #standing} are said of. */
    public static String standsBehind(Attribute attribute) {
        return switch (attribute) {
            case TREES, BASAL_AREA, QUADRATIC_MEAN_DIAMETER -> "";
            case VOLUME -> "volume equations";
            case LOG_VOLUME, NET_LOG_VOLUME -> "stem profiles";
            case BOARD_FEET, NET_BOARD_FEET -> "log rule and stem profiles";
            case VALUE -> "prices, log rule and stem profiles";
            case GREEN_WEIGHT -> "volume equations and weight factors";
            case BIOMASS -> "biomass equations";
            case CARBON -> "biomass equations and carbon fraction";
        };
    }

    /** A remark for titles that show the target attribute; empty where there is nothing to remark. */
    static String targetRemark(Design design, WoodUsed used) {
        Attribute target = design.targetAttribute();
        String standing = standing(used, target, "*");
        return standing.isEmpty() ? "" : " " + capital(standsBehind(target)) + ": " + standing + ".";
    }
}
