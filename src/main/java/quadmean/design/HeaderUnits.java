package quadmean.design;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quadmean.units.AngleScale;
import quadmean.units.Unit;

/** Units that people write into headers: {@code dbh_in}, {@code DBH (cm)}, {@code Ht [ft]}. */
public final class HeaderUnits {
    private static final Pattern BRACKETED = Pattern.compile("[(\\[{]\\s*([^()\\[\\]{}]+?)\\s*[)\\]}]\\s*$");
    private static final Pattern APPENDED = Pattern.compile("[\\s_.,/-]([^\\s_.,/-]+)\\s*$");

    private static final Map<String, Unit> LENGTHS = Map.ofEntries(
            Map.entry("mm", Unit.MILLIMETRE),
            Map.entry("cm", Unit.CENTIMETRE),
            Map.entry("dm", Unit.DECIMETRE),
            Map.entry("m", Unit.METRE),
            Map.entry("in", Unit.INCH),
            Map.entry("inch", Unit.INCH),
            Map.entry("inches", Unit.INCH),
            Map.entry("\"", Unit.INCH),
            Map.entry("ft", Unit.FOOT),
            Map.entry("foot", Unit.FOOT),
            Map.entry("feet", Unit.FOOT),
            Map.entry("'", Unit.FOOT),
            Map.entry("chain", Unit.CHAIN),
            Map.entry("chains", Unit.CHAIN));

    private static final Map<String, AngleScale> ANGLES = Map.of(
            "percent", AngleScale.PERCENT,
            "pct", AngleScale.PERCENT,
            "%", AngleScale.PERCENT,
            "deg", AngleScale.DEGREES,
            "degrees", AngleScale.DEGREES,
            "°", AngleScale.DEGREES,
            "topo", AngleScale.TOPOGRAPHIC);

    private static final Map<String, Unit> VOLUMES = Map.of(
            "m3", Unit.CUBIC_METRE,
            "m³", Unit.CUBIC_METRE,
            "ft3", Unit.CUBIC_FOOT,
            "ft³", Unit.CUBIC_FOOT,
            "cuft", Unit.CUBIC_FOOT,
            "cu ft", Unit.CUBIC_FOOT);

    private static final Map<String, Unit> GROUND = Map.of(
            "ha", Unit.HECTARE,
            "hectares", Unit.HECTARE,
            "ac", Unit.ACRE,
            "acre", Unit.ACRE,
            "acres", Unit.ACRE);

    private HeaderUnits() {}

    /** The unit of length that a header ends with. */
    public static Optional<Unit> length(String header) {
        return word(header).map(LENGTHS::get);
    }

    /** The unit of wood volume that a header ends with. */
    public static Optional<Unit> volume(String header) {
        return word(header).map(VOLUMES::get);
    }

    /** The unit of an area of ground that a header ends with. */
    public static Optional<Unit> ground(String header) {
        return word(header).map(GROUND::get);
    }

    /** The scale of angles that a header ends with. */
    public static Optional<AngleScale> angle(String header) {
        return word(header).map(ANGLES::get);
    }

    /** The header without its unit, for guessing what the column is. */
    public static String bare(String header) {
        if (length(header).isEmpty()
                && angle(header).isEmpty()
                && volume(header).isEmpty()) {
            return header;
        }
        Matcher bracketed = BRACKETED.matcher(header);
        Pattern unit = bracketed.find() ? BRACKETED : APPENDED;
        return unit.matcher(header).replaceFirst("").strip();
    }

    private static Optional<String> word(String header) {
        Matcher bracketed = BRACKETED.matcher(header);
        Matcher found = bracketed.find() ? bracketed : APPENDED.matcher(header);
        found.reset();
        return found.find() ? Optional.of(found.group(1).toLowerCase(Locale.ROOT)) : Optional.empty();
    }
}
