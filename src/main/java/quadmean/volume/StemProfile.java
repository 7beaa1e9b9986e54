package quadmean.volume;

import java.util.Optional;
import quadmean.model.TaperSpec;
import quadmean.units.BasalArea;

/** Diameters inside bark up one stem, thinner with every step up, 0 at the tip. */
public sealed interface StemProfile permits OrmerodProfile, KozakProfile, FormClassProfile {

    /**
     * The profile of a tree.
     *
     * @param spec form, coefficients and bark
     * @param dbhCm dbh outside bark (cm), above 0
     * @param heightM total height (m)
     * @param breastHeightM breast height (m)
     * @return empty where the form has no profile for such a tree: it reaches no higher than the form's fixed point
     *     (breast height, or 17.3 ft under a form class), or would be thicker there than at breast height
     */
    static Optional<StemProfile> of(TaperSpec spec, double dbhCm, double heightM, double breastHeightM) {
        if (!(heightM > breastHeightM && dbhCm > 0)) {
            return Optional.empty();
        }
        return switch (spec.form()) {
            case ORMEROD -> Optional.of(OrmerodProfile.of(spec, dbhCm, heightM, breastHeightM));
            case KOZAK_1969 -> Optional.of(KozakProfile.of(spec, dbhCm, heightM));
            case FORM_CLASS -> FormClassProfile.of(spec, dbhCm, heightM, breastHeightM);
        };
    }

    /** Height of the tip above ground (m). */
    double totalHeightM();

    /**
     * Diameter inside bark at a height.
     *
     * @param heightM height above ground (m), 0 or more
     * @return cm; 0 from the tip on
     */
    double dibCm(double heightM);

    /**
     * Volume inside bark between two heights.
     *
     * @param fromM lower height above ground (m), 0 or more
     * @param toM upper height (m); what lies above the tip adds nothing
     * @return m³; 0 if the upper height is not above the lower
     */
    default double volumeM3(double fromM, double toM) {
        double tip = totalHeightM();
        double top = Math.min(toM, tip);
        if (!(top > fromM)) {
            return 0;
        }
        // over the root of the distance to the tip, in which broken powers of that distance are smoother
        return Quadrature.integral(
                t -> 2 * t * BasalArea.ofTree(dibCm(tip - t * t)), Math.sqrt(tip - top), Math.sqrt(tip - fromM));
    }

    /**
     * The height up to which the stem is at least so thick.
     *
     * @param dibCm diameter inside bark (cm), 0 or more
     * @return height above ground (m), to the last digit but two; NaN if the stem is thinner already at the ground
     */
    default double heightAt(double dibCm) {
        if (!(dibCm(0) >= dibCm)) {
            return Double.NaN;
        }
        double thick = 0;
        double thin = totalHeightM();
        for (int halving = 0; halving < 52; halving++) {
            double middle = (thick + thin) / 2;
            if (dibCm(middle) >= dibCm) {
                thick = middle;
            } else {
                thin = middle;
            }
        }
        return dibCm > 0 ? thick : totalHeightM();
    }
}
