package quadmean.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.measure.CommonPractice;
import quadmean.measure.FixedPlot;
import quadmean.measure.Slope;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.units.AngleScale;
import quadmean.units.DistanceTo;
import quadmean.units.PlotOnSlope;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * The numbers that a crew looks up in the woods, for one design. All of them come from {@code measure}; lengths are
 * metric and the rows stand at round values of the design's units.
 *
 * @param units unit system that the rows are round in
 * @param tapeM a round horizontal length (m), as the example of a slope table: 100 ft or 20 m
 * @param slopes slopes and what a horizontal length becomes along them
 * @param circles sizes of fixed or nested plots; none for other kinds
 * @param strip the strip, if the plots are strips; else null
 * @param limits limiting distances: of each factor, to each part of the stem that the design leaves open
 * @param clinometer heights above the eye
 * @param examples heights worked out from readings of that scale: base below the eye, base above it
 * @param standing where to stand for trees of some heights
 * @param agreement share of a height by which two readings of it may differ (source: {@link CommonPractice#AGREEMENT})
 * @param heights which trees get a height
 */
public record FieldTables(
        UnitSystem units,
        double tapeM,
        List<SlopeLine> slopes,
        List<Circle> circles,
        @Nullable StripLine strip,
        List<LimitTable> limits,
        ClinometerTable clinometer,
        List<SightingExample> examples,
        List<StandingPlace> standing,
        double agreement,
        HeightSubsample heights) {
    private static final int STEEPEST_PERCENT = 100;
    private static final int SLOPE_STEP = 5;
    private static final double US_TAPE = 100;
    private static final double METRIC_TAPE = 20;

    public FieldTables {
        slopes = List.copyOf(slopes);
        circles = List.copyOf(circles);
        limits = List.copyOf(limits);
        examples = List.copyOf(examples);
        standing = List.copyOf(standing);
    }

    /**
     * A slope.
     *
     * @param percent rise over run (percent)
     * @param degrees its angle (degrees)
     * @param secant length along it over horizontal length
     * @param tapeM length along it (m) of the horizontal example of the table
     */
    public record SlopeLine(double percent, double degrees, double secant, double tapeM) {
        static SlopeLine ofPercent(double percent, double tapeM) {
            Slope slope = Slope.of(AngleScale.PERCENT, percent);
            return new SlopeLine(percent, slope.on(AngleScale.DEGREES), slope.secant(), slope.along(tapeM));
        }

        Slope slope() {
            return Slope.of(AngleScale.PERCENT, percent);
        }
    }

    /**
     * A circular plot, or a ring of a nested one.
     *
     * @param minDbhCm smallest dbh that is tallied on it (cm), 0 where all are
     * @param radiusM horizontal radius (m)
     * @param onSlope how it keeps its area on a slope
     * @param limitsM how far a tree in it may stand along the ground (m), by the slopes of the tables: of the line to the tree,
     *     or of the fall line under {@link PlotOnSlope#LARGER_RADIUS}
     */
    public record Circle(double minDbhCm, double radiusM, PlotOnSlope onSlope, List<Double> limitsM) {
        public Circle {
            limitsM = List.copyOf(limitsM);
        }

        static Circle of(double minDbhCm, double areaHa, PlotOnSlope onSlope, List<SlopeLine> slopes) {
            FixedPlot plot = FixedPlot.ofArea(areaHa);
            return new Circle(
                    minDbhCm,
                    plot.radius(),
                    onSlope,
                    slopes.stream()
                            .map(s -> plot.limit(onSlope, s.slope(), s.slope()))
                            .toList());
        }
    }

    /**
     * A strip.
     *
     * @param widthM full horizontal width (m)
     * @param lengthM horizontal length (m)
     * @param halfWidthsM from the line to its edge along the ground (m), by the slopes of the tables across the line
     */
    public record StripLine(double widthM, double lengthM, List<Double> halfWidthsM) {
        public StripLine {
            halfWidthsM = List.copyOf(halfWidthsM);
        }
    }

    /** The tables of a design. */
    public static FieldTables of(Design design) {
        double tape =
                design.units().length().convert(design.units() == UnitSystem.US ? US_TAPE : METRIC_TAPE, Unit.METRE);
        List<SlopeLine> slopes = IntStream.rangeClosed(0, STEEPEST_PERCENT / SLOPE_STEP)
                .mapToObj(i -> SlopeLine.ofPercent(i * SLOPE_STEP, tape))
                .toList();
        ClinometerTable clinometer = ClinometerTable.of(design);
        return new FieldTables(
                design.units(),
                tape,
                slopes,
                circles(design, slopes),
                design.plot() instanceof PlotDesign.Strip s ? strip(s, slopes) : null,
                limits(design),
                clinometer,
                clinometer.examples(),
                StandingPlace.of(design, clinometer.scale()),
                CommonPractice.AGREEMENT,
                HeightSubsample.of(design));
    }

    private static List<Circle> circles(Design design, List<SlopeLine> slopes) {
        PlotOnSlope onSlope = design.plotRules().onSlope();
        if (design.plot() instanceof PlotDesign.Fixed fixed) {
            return List.of(Circle.of(0, fixed.areaHa(), onSlope, slopes));
        }
        return design.plot() instanceof PlotDesign.Nested nested
                ? nested.rings().stream()
                        .map(r -> Circle.of(r.minDbhCm(), r.areaHa(), onSlope, slopes))
                        .toList()
                : List.of();
    }

    private static StripLine strip(PlotDesign.Strip strip, List<SlopeLine> slopes) {
        return new StripLine(
                strip.widthM(),
                strip.lengthM(),
                slopes.stream().map(s -> s.slope().along(strip.widthM() / 2)).toList());
    }

    private static List<LimitTable> limits(Design design) {
        List<LimitTable> tables = new ArrayList<>();
        if (design.plot() instanceof PlotDesign.Point point) {
            DistanceTo stated = design.plotRules().limitTo();
            List<DistanceTo> parts = stated == null ? List.of(DistanceTo.values()) : List.of(stated);
            parts.forEach(
                    to -> tables.add(LimitTable.of(point.basalAreaFactor(), to, LimitTable.Purpose.TALLY, design)));
            if (point.measuring() instanceof Measuring.LargerFactor larger) {
                parts.forEach(to ->
                        tables.add(LimitTable.of(larger.basalAreaFactor(), to, LimitTable.Purpose.MEASURE, design)));
            }
        }
        return tables;
    }
}
