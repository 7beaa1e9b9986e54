package quadmean.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quadmean.model.BiomassSpec;
import quadmean.model.BiomassSpec.Form;
import quadmean.model.Provenance;
import quadmean.model.Rule;
import quadmean.model.Standing;
import quadmean.model.ValidRange;
import quadmean.units.Unit;

/** Reads {@code [biomass.CODE]}: an equation of the library by name, or one that states its form and coefficients. */
final class BiomassParser {
    private static final Map<String, Form> FORMS = Options.of(Form.values(), Form::id);
    /** Harmless where an equation cannot be used; the problem is noted, and the design refused. */
    private static final List<Double> STAND_IN = List.of(1.0, 1.0);

    private BiomassParser() {}

    static BiomassSpec read(String code, Section s) {
        if (s.has("library")) {
            return LibraryChoice.read(s, BiomassSpec.class)
                    .map(b -> b.forCode(code))
                    .orElseGet(() -> new BiomassSpec(
                            code,
                            "",
                            Form.LOG,
                            STAND_IN,
                            ValidRange.NOT_STATED,
                            new Provenance("missing", Standing.FROM_MEMORY),
                            ""));
        }
        return spec(code, Stated.alone(s), "");
    }

    /**
     * Reads one equation.
     *
     * @param code species code, group, or {@code *}
     * @param library its name in the library; empty in a design
     */
    static BiomassSpec spec(String code, Stated s, String library) {
        Form form = s.required("form", FORMS).orElse(Form.LOG);
        List<Double> coefficients = form == Form.LOG
                ? List.of(s.required("b0", Range.FINITE), s.required("b1", Range.FINITE))
                : powers(s.at("powers"));
        return new BiomassSpec(
                code,
                s.at("component").requiredText("component"),
                form,
                coefficients,
                RangeParser.dbh(s, Unit.CENTIMETRE),
                s.provenance(),
                library);
    }

    private static List<Double> powers(Section s) {
        List<List<Double>> pairs = s.requiredNumberRows("powers", Range.FINITE);
        if (pairs.isEmpty()) {
            return STAND_IN; // noted already
        }
        if (!pairs.stream().allMatch(p -> p.size() == 2)) {
            String detail = s.path() + ".powers needs pairs [b1, b2], one for each part of the tree that is added";
            s.problem(Rule.DESIGN_VALUE, "powers", pairs.toString(), detail);
            return STAND_IN;
        }
        List<Double> flat = new ArrayList<>();
        pairs.forEach(flat::addAll);
        return flat;
    }
}
