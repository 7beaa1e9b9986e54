package quadmean.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import quadmean.model.Provenance;
import quadmean.model.Rule;
import quadmean.model.ValidRange;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
import quadmean.model.VolumeTable;
import quadmean.units.Quantity;
import quadmean.units.Unit;

/** Reads a volume equation that states its form and coefficients. */
final class EquationParser {
    private static final Map<String, LogBase> LOG_BASES = Options.of(LogBase.values(), LogBase::id);
    private static final Map<String, VolumeForm> FORMS = Options.of(VolumeForm.values(), VolumeForm::id);

    private final Stated s;
    private final VolumeForm form;

    private EquationParser(Stated s, VolumeForm form) {
        this.s = s;
        this.form = form;
    }

    /**
     * Reads one equation; empty if its form or its table cannot be used, which is noted.
     *
     * @param code species code, group, or {@code *}
     * @param library its name in the library; empty in a design
     */
    static Optional<VolumeSpec> parse(String code, Stated s, VolumeKind kind, String library) {
        Optional<VolumeForm> form = s.required("form", FORMS);
        if (form.isEmpty()) { // which other keys there may be depends on it
            s.own().knows(s.own().keys().toArray(String[]::new));
            s.provenance();
            return Optional.empty();
        }
        return new EquationParser(s, form.get()).spec(code, kind, library);
    }

    private Optional<VolumeSpec> spec(String code, VolumeKind kind, String library) {
        List<Double> coefficients = form.coefficients().stream()
                .map(name -> s.required(name, name.endsWith("form_class") ? Range.FORM_CLASS : Range.FINITE))
                .toList();
        boolean logarithmic = form.isLogarithmic();
        LogBase base = logarithmic ? s.required("log_base", LOG_BASES).orElse(LogBase.E) : LogBase.E;
        double sd = logarithmic ? s.at("residual_sd").number("residual_sd", Range.NOT_NEGATIVE, 0) : 0;
        Optional<VolumeTable> table = form == VolumeForm.TABLE ? TableParser.parse(s) : Optional.empty();
        boolean byLogs = form == VolumeForm.FORM_CLASS
                || (form == VolumeForm.TABLE && TableParser.entry(s) == VolumeTable.Entry.LOGS);
        Units units = form == VolumeForm.TAPER ? Units.METRIC : units(kind, byLogs);
        checkUnits(units, kind);
        ValidRange range = form == VolumeForm.TAPER ? ValidRange.NOT_STATED : range(units, byLogs);
        Provenance provenance = s.provenance();
        if (form == VolumeForm.TABLE && table.isEmpty()) {
            return Optional.empty(); // noted already
        }
        return Optional.of(new VolumeSpec(
                code,
                form,
                coefficients,
                table,
                base,
                sd,
                units.dbh(),
                units.height(),
                units.volume(),
                range,
                provenance,
                library));
    }

    private record Units(Unit dbh, Unit height, Unit volume) {
        static final Units METRIC = new Units(Unit.CENTIMETRE, Unit.METRE, Unit.CUBIC_METRE);
    }

    private Units units(VolumeKind kind, boolean byLogs) {
        Unit height = byLogs ? Unit.METRE : s.unit("height_unit", Quantity.LENGTH);
        return new Units(s.unit("dbh_unit", Quantity.LENGTH), height, kind.unit(s));
    }

    private ValidRange range(Units units, boolean byLogs) {
        return byLogs ? RangeParser.dbh(s, units.dbh()) : RangeParser.both(s, units.dbh(), units.height());
    }

    /** Some forms fix the units of their coefficients, or have cubic volume by definition. */
    private void checkUnits(Units units, VolumeKind kind) {
        boolean cubic = form == VolumeForm.HONER_METRIC || form == VolumeForm.FORM_FACTOR || form == VolumeForm.TAPER;
        if (cubic && (kind == VolumeKind.BOARD_FEET || units.volume() == Unit.BOARD_FOOT)) {
            s.at("form")
                    .problem(
                            Rule.DESIGN_VALUE,
                            "form",
                            form.id(),
                            "the form " + form.id()
                                    + " gives cubic volume: use it in [volume.CODE], or take an equation"
                                    + " for board feet");
        } else if (form == VolumeForm.HONER_METRIC && !units.equals(Units.METRIC)) {
            s.at("form")
                    .problem(
                            Rule.DESIGN_VALUE,
                            "form",
                            form.id(),
                            "honer_metric is written for D in cm, H in m and V in m3: state these units, or use honer,"
                                    + " which takes the same coefficients in in, ft and ft3");
        }
    }
}
