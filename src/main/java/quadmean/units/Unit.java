package quadmean.units;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The units of the trade, each with its exact factor to the base unit of its {@link Quantity}.
 *
 * <p>Factors follow from 1 in = 0.0254 m, 1 ft = 0.3048 m (international foot; NIST, revised unit conversion factors,
 * 2023), 1 acre = 43 560 ft² and 1 lb = 0.45359237 kg.
 */
public enum Unit {
    MILLIMETRE("mm", Quantity.LENGTH, 0.001),
    CENTIMETRE("cm", Quantity.LENGTH, 0.01),
    DECIMETRE("dm", Quantity.LENGTH, 0.1),
    METRE("m", Quantity.LENGTH, 1),
    INCH("in", Quantity.LENGTH, 0.0254),
    FOOT("ft", Quantity.LENGTH, 0.3048),
    CHAIN("chain", Quantity.LENGTH, 20.1168),

    SQUARE_METRE_OF_GROUND("m2", Quantity.GROUND_AREA, 1e-4),
    HECTARE("ha", Quantity.GROUND_AREA, 1),
    ACRE("ac", Quantity.GROUND_AREA, 0.40468564224),

    SQUARE_METRE("m2", Quantity.STEM_AREA, 1),
    SQUARE_FOOT("ft2", Quantity.STEM_AREA, 0.09290304),

    CUBIC_METRE("m3", Quantity.VOLUME, 1),
    CUBIC_FOOT("ft3", Quantity.VOLUME, 0.028316846592),

    BOARD_FOOT("bf", Quantity.BOARD_MEASURE, 1),

    KILOGRAM("kg", Quantity.MASS, 1),
    TONNE("t", Quantity.MASS, 1000),
    /** 2000 avoirdupois pounds of 0.453 592 37 kg. */
    SHORT_TON("ton", Quantity.MASS, 2000 * 0.45359237),

    DOLLAR("$", Quantity.MONEY, 1),

    TREE("trees", Quantity.COUNT, 1),

    TREES_PER_HECTARE("trees/ha", Quantity.COUNT_PER_AREA, 1),
    TREES_PER_ACRE("trees/ac", Quantity.COUNT_PER_AREA, 1 / 0.40468564224),

    SQUARE_METRES_PER_HECTARE("m2/ha", Quantity.STEM_AREA_PER_AREA, 1),
    SQUARE_FEET_PER_ACRE("ft2/ac", Quantity.STEM_AREA_PER_AREA, 1 / 4.356),

    CUBIC_METRES_PER_HECTARE("m3/ha", Quantity.VOLUME_PER_AREA, 1),
    CUBIC_FEET_PER_ACRE("ft3/ac", Quantity.VOLUME_PER_AREA, 0.028316846592 / 0.40468564224),

    BOARD_FEET_PER_HECTARE("bf/ha", Quantity.BOARD_MEASURE_PER_AREA, 1),
    BOARD_FEET_PER_ACRE("bf/ac", Quantity.BOARD_MEASURE_PER_AREA, 1 / 0.40468564224),

    TONNES_PER_HECTARE("t/ha", Quantity.MASS_PER_AREA, 1000),
    SHORT_TONS_PER_ACRE("ton/ac", Quantity.MASS_PER_AREA, 2000 * 0.45359237 / 0.40468564224),

    DOLLARS_PER_HECTARE("$/ha", Quantity.MONEY_PER_AREA, 1),
    DOLLARS_PER_ACRE("$/ac", Quantity.MONEY_PER_AREA, 1 / 0.40468564224),

    KILOGRAMS_PER_CUBIC_METRE("kg/m3", Quantity.DENSITY, 1),
    POUNDS_PER_CUBIC_FOOT("lb/ft3", Quantity.DENSITY, 0.45359237 / 0.028316846592),

    METRIC_RELATIVE_DENSITY("m2/ha/cm^0.5", Quantity.RELATIVE_DENSITY, 1),
    US_RELATIVE_DENSITY("ft2/ac/in^0.5", Quantity.RELATIVE_DENSITY, 1 / (4.356 * Math.sqrt(2.54))),

    /** A pure number has no symbol. */
    ONE("", Quantity.NUMBER, 1);

    private final String symbol;
    private final Quantity quantity;
    private final double toBase;

    Unit(String symbol, Quantity quantity, double toBase) {
        this.symbol = symbol;
        this.quantity = quantity;
        this.toBase = toBase;
    }

    /** The symbol in plain ASCII, as it stands in design files, CSV headers and JSON. */
    public String symbol() {
        return symbol;
    }

    /** The symbol as people read it, with raised digits and roots. */
    public String label() {
        return symbol.replaceAll("(\\w+)\\^0\\.5", "√$1").replace('2', '²').replace('3', '³');
    }

    /** What this unit measures. */
    public Quantity quantity() {
        return quantity;
    }

    /**
     * Converts a value of this unit to another unit of the same quantity.
     *
     * @throws IllegalArgumentException if the two units measure different quantities; both are named
     */
    public double convert(double value, Unit to) {
        if (quantity != to.quantity) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "%s (%s) does not convert to %s (%s)", symbol, quantity, to.symbol, to.quantity));
        }
        return this == to ? value : value * toBase / to.toBase;
    }

    /** The units of a quantity, in the order of this enum. */
    public static List<Unit> of(Quantity quantity) {
        return Arrays.stream(values()).filter(u -> u.quantity == quantity).toList();
    }

    /** The unit of a quantity that has this symbol, if there is one. */
    public static Optional<Unit> parse(Quantity quantity, String symbol) {
        return of(quantity).stream().filter(u -> u.symbol.equals(symbol)).findFirst();
    }
}
