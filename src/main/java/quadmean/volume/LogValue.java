package quadmean.volume;

import quadmean.model.Price.PriceUnit;
import quadmean.units.Unit;

/** Units of a price in a log. */
final class LogValue {
    private static final double BOARD_FEET_PER_MBF = 1000;

    private LogValue() {}

    /**
     * How much of a unit a net volume is.
     *
     * @param unit unit of the price
     * @param netM3 cubic volume less defect (m³)
     * @param netBoardFeet board feet less defect, NaN if not scaled
     * @param greenKgPerM3 green weight (kg/m³), NaN if not known
     * @return NaN if what the unit needs is not known
     */
    static double amount(PriceUnit unit, double netM3, double netBoardFeet, double greenKgPerM3) {
        return switch (unit) {
            case THOUSAND_BOARD_FEET -> netBoardFeet / BOARD_FEET_PER_MBF;
            case CUBIC_METRE -> netM3;
            case CUBIC_FOOT -> Unit.CUBIC_METRE.convert(netM3, Unit.CUBIC_FOOT);
            case HUNDRED_CUBIC_FEET -> Unit.CUBIC_METRE.convert(netM3, Unit.CUBIC_FOOT) / 100;
            case TONNE -> Unit.KILOGRAM.convert(netM3 * greenKgPerM3, Unit.TONNE);
            case SHORT_TON -> Unit.KILOGRAM.convert(netM3 * greenKgPerM3, Unit.SHORT_TON);
        };
    }
}
