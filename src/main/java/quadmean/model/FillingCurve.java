package quadmean.model;

import java.util.List;
import quadmean.units.UnitSystem;

/**
 * A curve that heights are filled from, with nothing of the fit behind it: height = breast height + ratio × form(dbh).
 *
 * @param species code of the species that it fills; {@code *} for all that have no curve of their own
 * @param source whose heights it was fitted to
 * @param form the form
 * @param parameters the parameters, in the order of the formula
 * @param ratio scales heights above breast height to a species that borrows the curve; 1 for none
 * @param units unit system of the parameters
 * @param breastHeight breast height in the length unit of that system
 * @param heights number of heights behind it
 * @param scatterM robust standard deviation of measured heights about it (m); NaN if it is not known
 * @param minDbhCm smallest dbh among them (cm); NaN if it is not known
 * @param maxDbhCm largest dbh among them (cm); NaN if it is not known
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record FillingCurve(
        String species,
        HeightSource source,
        CurveForm form,
        double[] parameters,
        double ratio,
        UnitSystem units,
        double breastHeight,
        int heights,
        double scatterM,
        double minDbhCm,
        double maxDbhCm) {
    /** The columns of a file of such curves. */
    public static final List<String> COLUMNS = List.of(
            "region",
            "species",
            "source",
            "form",
            "units",
            "breast_height",
            "ratio",
            "a",
            "b",
            "c",
            "heights",
            "scatter_m",
            "min_dbh_cm",
            "max_dbh_cm");
}
