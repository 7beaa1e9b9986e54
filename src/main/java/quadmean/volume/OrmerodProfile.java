package quadmean.volume;

import quadmean.model.TaperForm;
import quadmean.model.TaperSpec;
import quadmean.units.BasalArea;

/**
 * {@link TaperForm#ORMEROD}. Bark off a power of the height leaves a power: dib = dib at breast height·u^(p·b) with
 * u = (H - h)/(H - bh), so that the volume has a closed form.
 *
 * @param dbhInsideCm diameter inside bark at breast height (cm)
 * @param power exponent of u, above 0
 * @param totalHeightM height (m), above breast height
 * @param breastHeightM breast height (m)
 */
record OrmerodProfile(double dbhInsideCm, double power, double totalHeightM, double breastHeightM)
        implements StemProfile {
    static OrmerodProfile of(TaperSpec spec, double dbhCm, double heightM, double breastHeightM) {
        double p = spec.coefficients().get(0);
        return spec.bark()
                .map(b -> new OrmerodProfile(Bark.of(b).insideCm(dbhCm), p * b.b(), heightM, breastHeightM))
                .orElseGet(() -> new OrmerodProfile(dbhCm, p, heightM, breastHeightM));
    }

    @Override
    public double dibCm(double heightM) {
        return dbhInsideCm * Math.pow(ratio(heightM), power);
    }

    /** Exact: the integral of u^(2p) is u^(2p+1)/(2p+1). */
    @Override
    public double volumeM3(double fromM, double toM) {
        double degree = 2 * power + 1;
        double difference = Math.pow(ratio(fromM), degree) - Math.pow(ratio(toM), degree);
        return Math.max(0, BasalArea.ofTree(dbhInsideCm) * (totalHeightM - breastHeightM) / degree * difference);
    }

    private double ratio(double heightM) {
        return Math.max(0, totalHeightM - heightM) / (totalHeightM - breastHeightM);
    }
}
