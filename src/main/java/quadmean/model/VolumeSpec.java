package quadmean.model;

import java.util.List;
import quadmean.units.Unit;

/**
 * A tree volume equation as the design states it.
 *
 * @param code species code, group, or {@code *} for all the rest
 * @param form the form
 * @param coefficients values in the order of {@link VolumeForm#coefficients()}
 * @param logBase base of the logarithm in the Schumacher-Hall form
 * @param residualSd residual standard deviation on the log scale of {@code logBase}; 0 if not stated, and then the
 *     back-transform is not corrected for bias
 * @param dbhUnit unit of D
 * @param heightUnit unit of H
 * @param volumeUnit unit of V
 * @param source where the coefficients come from; never blank
 * @param standing whether anybody checked them against that source
 */
public record VolumeSpec(
        String code,
        VolumeForm form,
        List<Double> coefficients,
        LogBase logBase,
        double residualSd,
        Unit dbhUnit,
        Unit heightUnit,
        Unit volumeUnit,
        String source,
        Standing standing) {
    public VolumeSpec {
        coefficients = List.copyOf(coefficients);
        if (source.isBlank()) {
            throw new IllegalArgumentException("the source of a volume equation must not be blank");
        }
    }

    /** Base of the logarithms. */
    public enum LogBase {
        E("e"),
        TEN("10");

        private final String id;

        LogBase(String id) {
            this.id = id;
        }

        /** The word used in design files. */
        public String id() {
            return id;
        }
    }
}
