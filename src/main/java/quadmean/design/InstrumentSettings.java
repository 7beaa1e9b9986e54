package quadmean.design;

import java.util.OptionalDouble;

/**
 * The {@code [instrument]} table: corrections of readings that a calibration has found.
 *
 * @param indexError index error of the clinometer in units of its scale, positive where it reads too high; empty for none
 * @param distanceFactor what distances from eye to stem are multiplied by, above 0
 * @param why where the corrections come from, as it should read in the report
 */
public record InstrumentSettings(OptionalDouble indexError, double distanceFactor, String why) {
    /** Nothing to correct. */
    public static final InstrumentSettings NONE = new InstrumentSettings(OptionalDouble.empty(), 1, "");

    /** The corrections in a sentence; empty if there are none. */
    public String note() {
        if (equals(NONE)) {
            return "";
        }
        String index = indexError.isPresent()
                ? "an index error of " + Section.show(indexError.getAsDouble())
                        + " (units of the scale) was taken off each clinometer reading of tree heights, as an angle"
                : "";
        String distance = distanceFactor != 1
                ? "distances from eye to stem were multiplied by " + Section.show(distanceFactor)
                : "";
        String and = index.isEmpty() || distance.isEmpty() ? "" : "; ";
        return "Readings were corrected before use: " + index + and + distance + ". " + why
                + (why.endsWith(".") ? "" : ".");
    }
}
