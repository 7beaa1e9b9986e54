package quadmean.report;

import quadmean.chart.Wording;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Lengths and diameters as the sheets print them, in the units of the design. */
final class SheetLengths {
    private final UnitSystem units;

    SheetLengths(UnitSystem units) {
        this.units = units;
    }

    /** A length with so many decimals, without its unit. */
    String length(double metres, int decimals) {
        return Rounding.decimals(decimals).text(Unit.METRE.convert(metres, units.length()));
    }

    /** A length with so many decimals and its unit. */
    String withUnit(double metres, int decimals) {
        return length(metres, decimals) + "\u00a0" + unit();
    }

    /** A length as the design has it, without zeros at the end. */
    String plain(double metres) {
        return Wording.plain(Math.round(Unit.METRE.convert(metres, units.length()) * 100) / 100.0) + "\u00a0" + unit();
    }

    /** A dbh as the design has it, without zeros at the end and without its unit. */
    String dbh(double cm) {
        return Wording.plain(Math.round(Unit.CENTIMETRE.convert(cm, units.diameter()) * 100) / 100.0);
    }

    /** Unit of lengths. */
    String unit() {
        return units.length().label();
    }

    /** Unit of diameters. */
    String dbhUnit() {
        return units.diameter().label();
    }

    /** A basal area factor with its unit. */
    String factor(double squareMetresPerHectare) {
        double factor = Unit.SQUARE_METRES_PER_HECTARE.convert(squareMetresPerHectare, units.basalAreaFactor());
        return Wording.plain(Math.round(factor * 1e4) / 1e4) + "\u00a0"
                + units.basalAreaFactor().label();
    }

    /** A plot radius factor (m per cm) in the design's length per diameter, without its unit. */
    String radiusFactor(double metresPerCm) {
        double factor = Unit.METRE.convert(metresPerCm * units.diameter().convert(1, Unit.CENTIMETRE), units.length());
        return Rounding.decimals(4).text(factor);
    }
}
