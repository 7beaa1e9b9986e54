package quadmean.field;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.Design;
import quadmean.measure.FixedPlot;
import quadmean.measure.PointGauge;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.PlotDesign.Ring;
import quadmean.model.Rule;
import quadmean.units.DistanceTo;
import quadmean.units.Unit;

/** Whether a tree belongs on its plot: near enough, and on the ring that its dbh belongs to. */
final class PlotLimits {
    private final Design design;

    PlotLimits(Design design) {
        this.design = design;
    }

    /**
     * Notes a tree that stands beyond the limit, or on another ring.
     *
     * @return its distance as a share of the limit; NaN where there is none
     */
    double check(Row row, double dbhCm, RowProblems problems) {
        OptionalDouble written = Numbers.read(row, ColumnRole.POINT_DISTANCE, problems);
        if (Double.isNaN(dbhCm)) {
            return Double.NaN;
        }
        double reach = Double.NaN;
        if (written.isPresent() && hasLimit()) {
            Unit unit = unit(row);
            double metres = unit.convert(written.getAsDouble(), Unit.METRE);
            double limit = limitMetres(dbhCm);
            reach = metres / limit;
            if (metres > limit) {
                problems.add(
                        Rule.TREE_TOO_FAR,
                        ColumnRole.POINT_DISTANCE,
                        String.format(
                                Locale.ROOT,
                                "%s %s from the centre; the limit for this tree is %.2f %s",
                                row.text(ColumnRole.POINT_DISTANCE),
                                unit.symbol(),
                                Unit.METRE.convert(limit, unit),
                                unit.symbol()));
            }
        }
        checkRing(row, dbhCm, problems);
        return reach;
    }

    /** Distance from the centre (m), if there is one that can be read. */
    static OptionalDouble distanceM(Row row, RowProblems problems) {
        OptionalDouble written = Numbers.read(row, ColumnRole.POINT_DISTANCE, problems);
        return written.isPresent() ? OptionalDouble.of(unit(row).convert(written.getAsDouble(), Unit.METRE)) : written;
    }

    private static Unit unit(Row row) {
        ColumnSpec spec = row.file().columns().get(ColumnRole.POINT_DISTANCE);
        return spec == null || spec.unit() == null ? Unit.METRE : spec.unit();
    }

    /** A complete tally has no centre. */
    private boolean hasLimit() {
        return !(design.plot() instanceof PlotDesign.Complete);
    }

    /** Radius of the plot, of the tree's ring, half the width of a strip, or the limiting distance of a tree on a point (m). */
    private double limitMetres(double dbhCm) {
        PlotDesign plot = design.plot();
        if (plot instanceof PlotDesign.Point point) {
            DistanceTo to = Objects.requireNonNull(
                    design.plotRules().limitTo(), "a design with distances from points says what they reach");
            double factor = point.measuring() instanceof Measuring.LargerFactor larger
                    ? larger.basalAreaFactor()
                    : point.basalAreaFactor();
            return new PointGauge(factor).limitingDistance(dbhCm, to);
        }
        if (plot instanceof PlotDesign.Strip strip) {
            return strip.widthM() / 2;
        }
        double areaHa = plot instanceof PlotDesign.Fixed fixed
                ? fixed.areaHa()
                : rings().get(Math.max(0, ringOf(dbhCm) - 1)).areaHa();
        return FixedPlot.ofArea(areaHa).radius();
    }

    private void checkRing(Row row, double dbhCm, RowProblems problems) {
        String written = row.text(ColumnRole.RING);
        if (written.isEmpty() || rings().isEmpty()) {
            return;
        }
        String belongs = Integer.toString(ringOf(dbhCm));
        if (!written.equals(belongs)) {
            problems.add(
                    Rule.RING_WRONG,
                    ColumnRole.RING,
                    "tallied on ring " + written + "; its dbh belongs on ring " + belongs);
        }
    }

    private List<Ring> rings() {
        return design.plot() instanceof PlotDesign.Nested nested ? nested.rings() : List.of();
    }

    /** Number of the ring, 1 for the smallest trees; 0 for a tree too small for any. */
    private int ringOf(double dbhCm) {
        return (int) IntStream.range(0, rings().size())
                .filter(i -> dbhCm >= rings().get(i).minDbhCm())
                .count();
    }
}
