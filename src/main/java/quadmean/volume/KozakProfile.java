package quadmean.volume;

import java.util.Optional;
import quadmean.model.BarkSpec;
import quadmean.model.TaperForm;
import quadmean.model.TaperSpec;

/**
 * {@link TaperForm#KOZAK_1969} with coefficients that add up to 0, so that d² = D²·(1 - z)·(b0 - b2·z), z = h/H. Its
 * volume is exact; with bark of an exponent other than 1 the error is under one part in a million.
 *
 * @param dbhCm dbh outside bark (cm)
 * @param b0 coefficient, above 0
 * @param b2 coefficient, between -b0 and b0
 * @param bark bark to take off
 * @param totalHeightM height (m)
 */
record KozakProfile(double dbhCm, double b0, double b2, Optional<BarkSpec> bark, double totalHeightM)
        implements StemProfile {
    static KozakProfile of(TaperSpec spec, double dbhCm, double heightM) {
        return new KozakProfile(
                dbhCm, spec.coefficients().get(0), spec.coefficients().get(2), spec.bark(), heightM);
    }

    @Override
    public double dibCm(double heightM) {
        double z = Math.min(1, heightM / totalHeightM);
        double diameter = dbhCm * Math.sqrt(Math.max(0, (1 - z) * (b0 - b2 * z)));
        return bark.map(b -> Bark.of(b).insideCm(diameter)).orElse(diameter);
    }
}
