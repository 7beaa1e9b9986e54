package quadmean.volume;

import java.util.Optional;
import quadmean.model.TaperForm;
import quadmean.model.TaperSpec;
import quadmean.units.Unit;

/**
 * {@link TaperForm#FORM_CLASS}. Above 17.3 ft the volume is off by less than one part in 10¹² for Behre's a of 0.1 or
 * more; below it is exact.
 *
 * @param dbhInsideCm diameter inside bark at breast height (cm)
 * @param formCm diameter inside bark at 17.3 ft (cm), no larger
 * @param a Behre's coefficient, 0.1 to 1 (1 is a cone)
 * @param totalHeightM height (m), above 17.3 ft
 * @param breastHeightM breast height (m)
 */
record FormClassProfile(double dbhInsideCm, double formCm, double a, double totalHeightM, double breastHeightM)
        implements StemProfile {
    /** Top of a 16-ft log over a stump of 1 ft, with 0.3 ft of trim (m): the height of Girard's form class. */
    static final double FORM_HEIGHT_M = Unit.FOOT.convert(17.3, Unit.METRE);

    static Optional<StemProfile> of(TaperSpec spec, double dbhCm, double heightM, double breastHeightM) {
        double inside = spec.bark().map(b -> Bark.of(b).insideCm(dbhCm)).orElse(dbhCm);
        double formCm = dbhCm * spec.coefficients().get(0) / 100;
        return heightM > FORM_HEIGHT_M && inside >= formCm
                ? Optional.of(
                        new FormClassProfile(inside, formCm, spec.coefficients().get(1), heightM, breastHeightM))
                : Optional.empty();
    }

    @Override
    public double dibCm(double heightM) {
        if (heightM <= FORM_HEIGHT_M) {
            double taper = (dbhInsideCm - formCm) / (FORM_HEIGHT_M - breastHeightM);
            return formCm + taper * (FORM_HEIGHT_M - heightM);
        }
        double x = Math.max(0, totalHeightM - heightM) / (totalHeightM - FORM_HEIGHT_M);
        return formCm * x / (a + (1 - a) * x);
    }

    /** In two parts: the line and the hyperbola meet in an edge. */
    @Override
    public double volumeM3(double fromM, double toM) {
        return StemProfile.super.volumeM3(fromM, Math.min(toM, FORM_HEIGHT_M))
                + StemProfile.super.volumeM3(Math.max(fromM, FORM_HEIGHT_M), toM);
    }
}
