package quadmean.layout;

import java.util.List;
import java.util.Locale;
import quadmean.model.Rule;
import quadmean.units.Unit;

/** Holds areas on the map against those of the design. */
final class AreaCheck {
    /** Difference above which it is noted, in percent (common practice, no source). */
    private static final double NOTED = 2;

    /** How many times as large as the other an area cannot be without a mistake. */
    private static final double ABSURD = 2;

    /** How near a slip explains a difference. */
    private static final double EXPLAINS = 0.05;

    /**
     * A slip of units.
     *
     * @param ratio of the map's area to the design's that it makes
     */
    private record Slip(double ratio, String words) {}

    private static final double FEET = 1 / (0.3048 * 0.3048);
    private static final double ACRES = 1 / Unit.ACRE.convert(1, Unit.HECTARE);
    private static final List<Slip> SLIPS = List.of(
            new Slip(FEET, "feet on the map were taken for metres"),
            new Slip(1 / FEET, "metres on the map were taken for feet"),
            new Slip(1 / ACRES, "the design's area is in acres, and was taken for hectares"),
            new Slip(ACRES, "the design's area is in hectares, and was taken for acres"),
            new Slip(66 * 66, "feet on the map were taken for chains"),
            new Slip(1.0 / (66 * 66), "chains on the map were taken for feet"));

    private final Unit unit;
    private final BoundaryLog log;

    AreaCheck(Unit unit, BoundaryLog log) {
        this.unit = unit;
        this.log = log;
    }

    void check(StratumArea area) {
        double ratio = area.mapHa() / area.designHa();
        boolean absurd = ratio > ABSURD || ratio < 1 / ABSURD;
        if (absurd || Math.abs(area.differencePercent()) > NOTED) {
            String what = area.code().equals("*") ? "the tract" : "stratum " + area.code();
            String detail = String.format(
                    Locale.ROOT,
                    "%s has %s on the map and %s in the design, a difference of %+.1f %%%s",
                    what,
                    show(area.mapHa()),
                    show(area.designHa()),
                    area.differencePercent(),
                    slip(ratio));
            log.add(absurd ? Rule.BOUNDARY_ABSURD : Rule.BOUNDARY_AREA, 0, "", show(area.mapHa()), detail);
        }
    }

    private static String slip(double ratio) {
        return SLIPS.stream()
                .filter(s -> Math.abs(ratio / s.ratio() - 1) < EXPLAINS)
                .findFirst()
                .map(s -> ", as if " + s.words())
                .orElse("");
    }

    private String show(double hectares) {
        return String.format(Locale.ROOT, "%.2f %s", Unit.HECTARE.convert(hectares, unit), unit.symbol());
    }
}
