package quadmean.report;

import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.UnitSystem;

/** An estimate in a unit system as people read it, every number cut by the standard error. */
final class RowText {
    private final Design design;
    private final EstimateRow row;
    private final UnitSystem system;
    private final Rounding rounding;

    private RowText(Design design, EstimateRow row, UnitSystem system) {
        this.design = design;
        this.row = row;
        this.system = system;
        this.rounding = Rounding.of(row.in(system, row.mean()), row.in(system, row.se()));
    }

    static RowText of(Design design, EstimateRow row, UnitSystem system) {
        return new RowText(design, row, system);
    }

    /** The other unit system. */
    static UnitSystem other(UnitSystem system) {
        return system == UnitSystem.METRIC ? UnitSystem.US : UnitSystem.METRIC;
    }

    /** The estimate without its unit. */
    String mean() {
        return number(row.mean());
    }

    String se() {
        return hasLimits(row) ? number(row.se()) : Rounding.UNKNOWN;
    }

    /** The estimate with its unit. */
    String estimate() {
        return withUnit(mean());
    }

    String standardError() {
        return withUnit(se());
    }

    /** Both limits with the unit; a dash where they are unknown. */
    String limits() {
        return hasLimits(row)
                ? number(row.lower()) + " to " + number(row.upper()) + "\u00a0" + unit()
                : Rounding.UNKNOWN;
    }

    /** Whether a row has limits that mean anything: no trees on any plot gives a variance of 0, which says nothing. */
    static boolean hasLimits(EstimateRow row) {
        boolean isEmpty = row.se() == 0 && !row.reason().isEmpty();
        return Double.isFinite(row.lower()) && Double.isFinite(row.upper()) && !isEmpty;
    }

    /** The sampling error with its sign: {@code ±12.3 %}. */
    static String error(EstimateRow row) {
        String percent = Rounding.percent(row.samplingErrorPercent());
        return percent.equals(Rounding.UNKNOWN) ? percent : "±" + percent;
    }

    String unit() {
        return Wording.units(design, row.attribute(), row.basis(), system);
    }

    /** What the row estimates, in words: {@code volume, total}. */
    static String what(EstimateRow row, UnitSystem system) {
        return row.attribute().label() + basis(row.attribute(), row.basis(), system);
    }

    static String basis(Attribute attribute, Basis basis, UnitSystem system) {
        String area = system == UnitSystem.METRIC ? "hectare" : "acre";
        return switch (basis) {
            case PER_AREA -> " per " + area;
            case TOTAL -> ", total";
            case RATIO -> "";
        };
    }

    private String withUnit(String number) {
        return number.equals(Rounding.UNKNOWN) ? number : number + "\u00a0" + unit();
    }

    private String number(double metric) {
        return rounding.text(row.in(system, metric));
    }
}
