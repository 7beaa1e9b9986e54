package quadmean.design;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quadmean.model.Rule;
import quadmean.model.Standing;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
import quadmean.units.Quantity;
import quadmean.units.Unit;

/** Reads {@code [volume.CODE]}, CODE being a species, a group, or {@code "*"} for all the rest. */
final class VolumeParser {
    private static final Map<String, Standing> STANDINGS =
            Options.of(Standing.values(), s -> s.label().replace(' ', '_'));
    private static final Map<String, LogBase> LOG_BASES = Options.of(LogBase.values(), LogBase::id);

    private VolumeParser() {}

    static Map<String, VolumeSpec> parse(Section root, Map<String, SpeciesEntry> species) {
        Set<String> codes = new LinkedHashSet<>(species.keySet());
        species.values().stream()
                .map(SpeciesEntry::group)
                .filter(g -> !g.isEmpty())
                .forEach(codes::add);
        codes.add("*");
        Map<String, VolumeSpec> volumes = new LinkedHashMap<>();
        root.tables("volume").forEach((code, s) -> {
            if (!codes.contains(code)) {
                String hint = Nearest.to(code, codes)
                        .map(c -> "; did you mean " + c + "?")
                        .orElse("");
                s.problem(
                        Rule.DESIGN_VALUE,
                        "form",
                        code,
                        "\"" + code + "\" is no species or group of this design" + hint);
            }
            volumes.put(code, spec(code, s));
            s.close();
        });
        return volumes;
    }

    private static VolumeSpec spec(String code, Section s) {
        VolumeForm form = s.requiredChoice("form", Options.of(VolumeForm.values(), VolumeForm::id))
                .orElse(VolumeForm.HONER);
        List<Double> coefficients = form.coefficients().stream()
                .map(name -> s.requiredNumber(name, Range.FINITE))
                .toList();
        LogBase base = LogBase.E;
        double sd = 0;
        if (form == VolumeForm.SCHUMACHER_HALL) {
            base = s.requiredChoice("log_base", LOG_BASES).orElse(LogBase.E);
            sd = s.number("residual_sd", Range.NOT_NEGATIVE, 0);
        }
        String source = s.requiredText("source");
        return new VolumeSpec(
                code,
                form,
                coefficients,
                base,
                sd,
                unit(s, "dbh_unit", Quantity.LENGTH),
                unit(s, "height_unit", Quantity.LENGTH),
                unit(s, "volume_unit", Quantity.VOLUME),
                source.isBlank() ? "missing" : source,
                s.requiredChoice("standing", STANDINGS).orElse(Standing.FROM_MEMORY));
    }

    private static Unit unit(Section s, String key, Quantity quantity) {
        Map<String, Unit> units = Options.of(Unit.of(quantity), Unit::symbol);
        return s.requiredChoice(key, units).orElse(Unit.of(quantity).get(0));
    }
}
