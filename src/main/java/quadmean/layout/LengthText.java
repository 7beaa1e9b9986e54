package quadmean.layout;

import java.util.Locale;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Lengths in sentences, in the unit of the design. */
record LengthText(UnitSystem units) {
    /** A length with so many decimals and its unit. */
    String of(double metres, int decimals) {
        double length = Unit.METRE.convert(metres, units.length());
        return String.format(
                Locale.ROOT, "%,." + decimals + "f %s", length, units.length().symbol());
    }
}
