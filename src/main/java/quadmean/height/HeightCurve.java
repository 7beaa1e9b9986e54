package quadmean.height;

import quadmean.model.CurveForm;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * A curve in use: dbh in centimetres to height in metres. Inside it works in the unit system of its parameters, with
 * the breast height that goes with them.
 *
 * @param species species code, {@code *} for all species together
 * @param form the form
 * @param parameters its parameters, in the order of the formula
 * @param units unit system of the parameters
 * @param breastHeight breast height in the length unit of that system
 * @param heights number of heights it was fitted to
 * @param minDbhCm smallest dbh among them (cm)
 * @param maxDbhCm largest dbh among them (cm)
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
public record HeightCurve(
        String species,
        CurveForm form,
        double[] parameters,
        UnitSystem units,
        double breastHeight,
        int heights,
        double minDbhCm,
        double maxDbhCm) {

    /**
     * Height of a tree of this dbh.
     *
     * @param dbhCm dbh (cm), above 0
     * @return total height (m)
     */
    public double heightMetres(double dbhCm) {
        double d = Unit.CENTIMETRE.convert(dbhCm, units.diameter());
        double h = breastHeight + CurveModel.of(form).value(d, parameters);
        return units.length().convert(h, Unit.METRE);
    }

    /** Whether a dbh lies outside the range of the heights that the curve was fitted to. */
    public boolean isExtrapolated(double dbhCm) {
        return dbhCm < minDbhCm || dbhCm > maxDbhCm;
    }
}
