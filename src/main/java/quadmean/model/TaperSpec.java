package quadmean.model;

import java.util.List;
import java.util.Optional;

/**
 * A stem profile as the design states it.
 *
 * @param code species code, group, or {@code *} for all the rest
 * @param form the form
 * @param coefficients values in the order of {@link TaperForm#coefficients()}
 * @param bark bark to take off; empty if the profile is inside bark already
 * @param provenance where the coefficients come from
 */
public record TaperSpec(
        String code, TaperForm form, List<Double> coefficients, Optional<BarkSpec> bark, Provenance provenance) {
    public TaperSpec {
        coefficients = List.copyOf(coefficients);
    }
}
