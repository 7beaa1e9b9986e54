package quadmean.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quadmean.model.BarkSpec;
import quadmean.model.Provenance;
import quadmean.model.Rule;
import quadmean.model.Standing;
import quadmean.model.TaperForm;
import quadmean.model.TaperSpec;
import quadmean.units.Quantity;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [taper.CODE]}, CODE being a species, a group, or {@code "*"} for all the rest. */
final class TaperParser {
    private static final Map<String, Standing> STANDINGS =
            Options.of(Standing.values(), s -> s.label().replace(' ', '_'));

    /** Behre's coefficient for most species, from memory. */
    private static final double BEHRE = 0.38;

    /** Coefficients of {@link TaperForm#KOZAK_1969} as printed may be off 0 by this much in all. */
    private static final double ADDS_UP = 1e-6;

    /** Diameters outside bark (cm) at which bark must have a thickness. */
    private static final double[] TRIED_CM = {15, 60};

    private TaperParser() {}

    static Map<String, TaperSpec> parse(Section root, CodeCheck codes, UnitSystem units) {
        Map<String, TaperSpec> tapers = new LinkedHashMap<>();
        root.tables("taper").forEach((code, s) -> {
            codes.checkOrRest(s, "form", code);
            spec(code, s, units).ifPresent(t -> tapers.put(code, t));
        });
        return tapers;
    }

    private static Optional<TaperSpec> spec(String code, Section s, UnitSystem units) {
        Optional<TaperForm> form = s.requiredChoice("form", Options.of(TaperForm.values(), TaperForm::id));
        if (form.isEmpty()) {
            return Optional.empty(); // which keys belong here is not known
        }
        List<Double> coefficients = coefficients(s, form.get());
        Optional<BarkSpec> bark = s.has("bark") ? Optional.of(bark(s.table("bark"), units)) : Optional.empty();
        if (form.get() == TaperForm.FORM_CLASS) {
            checkFormClass(s, coefficients.get(0), bark);
        }
        TaperSpec spec = new TaperSpec(code, form.get(), coefficients, bark, provenance(s));
        s.close();
        return Optional.of(spec);
    }

    private static List<Double> coefficients(Section s, TaperForm form) {
        return switch (form) {
            case ORMEROD -> List.of(s.requiredNumber("p", Range.TAPER_EXPONENT));
            case KOZAK_1969 -> kozak(s);
            case FORM_CLASS -> List.of(s.requiredNumber("fc", Range.PERCENT), s.number("a", Range.TENTH_TO_ONE, BEHRE));
        };
    }

    private static List<Double> kozak(Section s) {
        double b0 = s.requiredNumber("b0", Range.POSITIVE);
        double b1 = s.requiredNumber("b1", Range.FINITE);
        double b2 = s.requiredNumber("b2", Range.FINITE);
        boolean complete = s.number("b0", Range.POSITIVE).isPresent() && s.has("b1") && s.has("b2");
        if (complete && !(Math.abs(b0 + b1 + b2) <= ADDS_UP)) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "b1",
                    Section.show(b1),
                    String.format(
                            Locale.ROOT,
                            "b0 + b1 + b2 = %.6g, so the stem is not 0 thick at its tip; write b1 = -(b0 + b2) = %.6g, or"
                                    + " mend b0 or b2",
                            b0 + b1 + b2,
                            -(b0 + b2)));
        } else if (complete && !(Math.abs(b2) <= b0)) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "b2",
                    Section.show(b2),
                    "the stem would grow thicker upwards somewhere: b2 lies between -b0 and b0");
        }
        return List.of(b0, b1, b2);
    }

    private static BarkSpec bark(Section s, UnitSystem units) {
        double a = s.requiredNumber("a", Range.POSITIVE);
        double b = s.number("b", Range.POSITIVE, 1);
        Map<String, Unit> lengths = Options.of(Unit.of(Quantity.LENGTH), Unit::symbol);
        Optional<Unit> unit = b == 1 ? s.choice("unit", lengths) : s.requiredChoice("unit", lengths);
        BarkSpec bark = new BarkSpec(a, b, unit.orElse(units.diameter()), provenance(s));
        for (double outsideCm : TRIED_CM) {
            double outside = Unit.CENTIMETRE.convert(outsideCm, bark.unit());
            if (s.has("a") && (b == 1 || unit.isPresent()) && a * Math.pow(outside, b) > outside) {
                s.problem(
                        Rule.DESIGN_VALUE,
                        "a",
                        Section.show(a),
                        "a stem of " + Section.show(outsideCm)
                                + " cm would be thicker inside bark than outside; check a, b and unit");
                break;
            }
        }
        s.close();
        return bark;
    }

    private static void checkFormClass(Section s, double formClass, Optional<BarkSpec> bark) {
        if (bark.isEmpty()) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "bark",
                    "",
                    "a form class needs [" + s.path()
                            + ".bark]: below 17.3 ft the stem runs through the diameter inside bark at breast height");
        } else if (bark.get().b() == 1 && bark.get().a() * 100 < formClass) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "fc",
                    Section.show(formClass),
                    "the stem would be thicker at 17.3 ft than inside bark at breast height; fc is at most 100 times"
                            + " bark.a");
        }
    }

    /** Source and standing of what a table gives. */
    static Provenance provenance(Section s) {
        String source = s.requiredText("source");
        return new Provenance(
                source.isBlank() ? "missing" : source,
                s.requiredChoice("standing", STANDINGS).orElse(Standing.FROM_MEMORY));
    }
}
