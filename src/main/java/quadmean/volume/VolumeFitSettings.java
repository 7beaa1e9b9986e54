package quadmean.volume;

import java.util.List;
import quadmean.units.UnitSystem;

/**
 * What is to be fitted.
 *
 * @param forms the forms to try, at least one
 * @param weights weights of the forms whose residuals are in volume
 * @param units units of the coefficients
 */
public record VolumeFitSettings(List<VolumeFitForm> forms, VolumeFitWeights weights, UnitSystem units) {
    public VolumeFitSettings {
        forms = List.copyOf(forms);
        if (forms.isEmpty()) {
            throw new IllegalArgumentException("no form to fit");
        }
    }
}
