package quadmean.design;

import java.util.OptionalDouble;

/**
 * Who cruised where; printed in the report and used for nothing else.
 *
 * @param crew who did the field work, as given
 * @param place where, as given
 * @param declinationDegrees magnetic declination that the crew set, east positive (degrees)
 */
public record CruiseNotes(String crew, String place, OptionalDouble declinationDegrees) {
    /** Nothing noted. */
    public static final CruiseNotes NONE = new CruiseNotes("", "", OptionalDouble.empty());
}
