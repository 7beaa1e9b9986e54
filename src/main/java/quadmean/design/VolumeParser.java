package quadmean.design;

import java.util.Map;
import java.util.Optional;
import quadmean.model.Rule;
import quadmean.model.Standing;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
import quadmean.units.Unit;

/**
 * Reads {@code [volume.CODE]} and {@code [board_feet.CODE]}, CODE being a species, a group, or {@code "*"} for all the
 * rest: an equation of the library by name, or one that states its form and coefficients.
 */
final class VolumeParser {
    private static final String FORM_CLASS = "form_class";
    /** Harmless where an equation cannot be used; the problem is noted, and the design refused. */
    private static final VolumeSpec STAND_IN = new VolumeSpec(
            "*",
            VolumeForm.FORM_FACTOR,
            java.util.List.of(0.4),
            LogBase.E,
            0,
            Unit.CENTIMETRE,
            Unit.METRE,
            Unit.CUBIC_METRE,
            "missing",
            Standing.FROM_MEMORY);

    private final Section root;
    private final VolumeKind kind;

    private VolumeParser(Section root, VolumeKind kind) {
        this.root = root;
        this.kind = kind;
    }

    static Map<String, VolumeSpec> parse(Section root, Map<String, SpeciesEntry> species) {
        return parse(root, species, VolumeKind.CUBIC);
    }

    static Map<String, VolumeSpec> parse(Section root, Map<String, SpeciesEntry> species, VolumeKind kind) {
        return CodeTables.read(root, kind.key(), species, new VolumeParser(root, kind)::spec);
    }

    private VolumeSpec spec(String code, Section s) {
        if (s.has("library")) {
            return LibraryChoice.read(s, VolumeSpec.class, FORM_CLASS)
                    .filter(v -> isRightKind(v, s))
                    .map(v -> withFormClass(v, s).forCode(code))
                    .orElse(STAND_IN);
        }
        Optional<VolumeSpec> spec = EquationParser.parse(code, Stated.alone(s), kind, "");
        spec.filter(v -> v.form() == VolumeForm.TAPER).ifPresent(v -> checkTaper(s));
        return spec.orElse(STAND_IN);
    }

    private boolean isRightKind(VolumeSpec v, Section s) {
        if (!kind.holds(v.volumeUnit())) {
            String detail = "the equation " + v.library() + " does not give " + kind.label() + "; " + kind.elsewhere();
            s.problem(Rule.DESIGN_VALUE, "library", v.library(), detail);
        }
        return kind.holds(v.volumeUnit());
    }

    /** Equations of the form class kind hold for the form class of their table unless the design states another. */
    private static VolumeSpec withFormClass(VolumeSpec v, Section s) {
        if (!s.has(FORM_CLASS)) {
            return v;
        }
        if (v.form() != VolumeForm.FORM_CLASS) {
            String detail = "the equation " + v.library() + " knows no form class: take form_class out";
            s.problem(Rule.DESIGN_VALUE, FORM_CLASS, "", detail);
            return v;
        }
        return v.with(FORM_CLASS, s.requiredNumber(FORM_CLASS, Range.FORM_CLASS));
    }

    private void checkTaper(Section s) {
        if (root.table("taper").keys().isEmpty()) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "form",
                    "taper",
                    "the form taper needs a stem profile: add a [taper.CODE] table");
        }
    }
}
