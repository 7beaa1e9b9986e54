package quadmean.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import quadmean.model.PlotDesign;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** What a kind of plot is called: {@code 0.1 ac}, {@code BAF 20 ft²/ac}. */
public final class KindName {
    private static final MathContext DIGITS = new MathContext(4);

    private KindName() {}

    /** The name in a unit system. */
    public static String of(PlotDesign plot, UnitSystem units) {
        String unit = " " + unit(plot, units).label();
        return (plot instanceof PlotDesign.Point ? "BAF " : "plot ") + number(size(plot, units)) + unit;
    }

    /** Its area, or its factor, in a unit system. */
    public static double size(PlotDesign plot, UnitSystem units) {
        if (plot instanceof PlotDesign.Fixed fixed) {
            return Unit.HECTARE.convert(fixed.areaHa(), units.area());
        }
        if (plot instanceof PlotDesign.Point point) {
            return Unit.SQUARE_METRES_PER_HECTARE.convert(point.basalAreaFactor(), units.basalAreaFactor());
        }
        throw new IllegalArgumentException("only fixed plots and points are compared");
    }

    /** The unit of that size. */
    public static Unit unit(PlotDesign plot, UnitSystem units) {
        return plot instanceof PlotDesign.Point ? units.basalAreaFactor() : units.area();
    }

    /** A number to four digits, as people write it. */
    static String number(double value) {
        BigDecimal cut = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return cut.signum() == 0 ? "0" : cut.toPlainString();
    }
}
