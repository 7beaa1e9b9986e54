package quadmean.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quadmean.units.Unit;

/**
 * A tree volume equation as the design or the library states it.
 *
 * @param code species code, group, or {@code *} for all the rest
 * @param form the form
 * @param coefficients values in the order of {@link VolumeForm#coefficients()}
 * @param table the table of {@link VolumeForm#TABLE}; empty for all other forms
 * @param logBase base of the logarithm in the logarithmic forms
 * @param residualSd residual standard deviation on the log scale of {@code logBase}; 0 if not stated, and then the
 *     back-transform is not corrected for bias
 * @param dbhUnit unit of D
 * @param heightUnit unit of H; of no meaning where {@link #needsHeight} says no
 * @param volumeUnit unit of V: of cubic volume, or board feet
 * @param range trees it was fitted to
 * @param provenance where the coefficients come from
 * @param library its name in the library; empty if the design states it
 */
public record VolumeSpec(
        String code,
        VolumeForm form,
        List<Double> coefficients,
        Optional<VolumeTable> table,
        LogBase logBase,
        double residualSd,
        Unit dbhUnit,
        Unit heightUnit,
        Unit volumeUnit,
        ValidRange range,
        Provenance provenance,
        String library)
        implements EquationSpec {
    public VolumeSpec {
        coefficients = List.copyOf(coefficients);
        if (coefficients.size() != form.coefficients().size()) {
            throw new IllegalArgumentException(form.id() + " has the coefficients " + form.coefficients());
        }
        if (table.isPresent() != (form == VolumeForm.TABLE)) {
            throw new IllegalArgumentException("a table goes with the form table, and with no other");
        }
    }

    /** An equation without a table, of which no range is known, stated in a design. */
    public VolumeSpec(
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
        this(
                code,
                form,
                coefficients,
                Optional.empty(),
                logBase,
                residualSd,
                dbhUnit,
                heightUnit,
                volumeUnit,
                ValidRange.NOT_STATED,
                new Provenance(source, standing),
                "");
    }

    /** Where the coefficients come from, in words. */
    public String source() {
        return provenance.source();
    }

    /** Whether anybody checked the coefficients against that source. */
    public Standing standing() {
        return provenance.standing();
    }

    /** Whether volumes are board feet. */
    public boolean isBoardFeet() {
        return volumeUnit == Unit.BOARD_FOOT;
    }

    /** Whether a tree needs a number of 16-ft logs to get a volume. */
    public boolean needsLogs() {
        return form == VolumeForm.FORM_CLASS
                || table.filter(t -> t.entry() == VolumeTable.Entry.LOGS).isPresent();
    }

    /** Whether a tree needs a height to get a volume. */
    public boolean needsHeight() {
        return !needsLogs();
    }

    /** The units, for people: {@code D in, H ft, V ft³}. */
    public String unitsText() {
        String second = needsLogs() ? "L 16-ft logs" : "H " + heightUnit.label();
        return "D " + dbhUnit.label() + ", " + second + ", V " + volumeUnit.label();
    }

    /** The same equation for another species, group, or {@code *}. */
    public VolumeSpec forCode(String other) {
        return copy(other, coefficients, provenance);
    }

    /** The same equation with more said of where it comes from. */
    public VolumeSpec with(Provenance other) {
        return copy(code, coefficients, other);
    }

    /** The same equation with another value of one coefficient, which it must have. */
    public VolumeSpec with(String coefficient, double value) {
        List<Double> changed = new ArrayList<>(coefficients);
        changed.set(form.coefficients().indexOf(coefficient), value);
        return copy(code, changed, provenance);
    }

    private VolumeSpec copy(String itsCode, List<Double> values, Provenance from) {
        return new VolumeSpec(
                itsCode,
                form,
                values,
                table,
                logBase,
                residualSd,
                dbhUnit,
                heightUnit,
                volumeUnit,
                range,
                from,
                library);
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
