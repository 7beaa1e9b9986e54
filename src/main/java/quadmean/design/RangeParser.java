package quadmean.design;

import java.util.OptionalDouble;
import quadmean.model.Rule;
import quadmean.model.ValidRange;
import quadmean.units.Unit;

/** Reads {@code min_dbh}, {@code max_dbh}, {@code min_height} and {@code max_height}, each of which may be left out. */
final class RangeParser {
    private RangeParser() {}

    /** Limits of dbh alone. */
    static ValidRange dbh(Stated s, Unit dbhUnit) {
        return new ValidRange(
                limit(s, "min_dbh", dbhUnit, Unit.CENTIMETRE),
                max(s, "dbh", dbhUnit, Unit.CENTIMETRE),
                Double.NaN,
                Double.NaN);
    }

    /** Limits of dbh and height. */
    static ValidRange both(Stated s, Unit dbhUnit, Unit heightUnit) {
        ValidRange dbh = dbh(s, dbhUnit);
        return new ValidRange(
                dbh.minDbhCm(),
                dbh.maxDbhCm(),
                limit(s, "min_height", heightUnit, Unit.METRE),
                max(s, "height", heightUnit, Unit.METRE));
    }

    /** The upper limit, which must lie above the lower one. */
    private static double max(Stated s, String what, Unit unit, Unit inside) {
        double min = limit(s, "min_" + what, unit, inside);
        double max = limit(s, "max_" + what, unit, inside);
        if (max <= min) {
            String key = "max_" + what;
            s.at(key)
                    .problem(
                            Rule.DESIGN_VALUE,
                            key,
                            Section.show(inside.convert(max, unit)),
                            s.at(key).path() + "." + key + " must lie above min_" + what
                                    + ": mend one, or leave out the limit that is not known");
        }
        return max;
    }

    private static double limit(Stated s, String key, Unit unit, Unit inside) {
        OptionalDouble value = s.at(key).number(key, Range.POSITIVE);
        return value.isPresent() ? unit.convert(value.getAsDouble(), inside) : Double.NaN;
    }
}
