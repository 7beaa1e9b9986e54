package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;

class HeightErrorsTest {
    private static final HeightErrors ERRORS = HeightErrors.commonPractice();

    /** Formulary 6.2: dH (m) for 0.25 degree, 0.10 m, eye 1.5 m, at 10, 15, 20, 25, 30, 40 and 50 m. */
    @ParameterizedTest
    @CsvSource({
        "15, 0.20, 0.17, 0.17, 0.19, 0.21, 0.26, 0.32",
        "25, 0.38, 0.29, 0.26, 0.25, 0.26, 0.30, 0.35",
        "40, 0.80, 0.57, 0.47, 0.42, 0.39, 0.39, 0.42",
    })
    void theTableOfErrors(
            double height, double d10, double d15, double d20, double d25, double d30, double d40, double d50) {
        double[] printed = {d10, d15, d20, d25, d30, d40, d50};
        double[] distances = {10, 15, 20, 25, 30, 40, 50};
        for (int i = 0; i < distances.length; i++) {
            double sd = ERRORS.heightSd(level(height, 1.5, distances[i]));
            Tolerance.printed(2).check(printed[i], sd, height + " m from " + distances[i] + " m");
        }
    }

    /** Formulary 6.2: 20 m and half a percent point on both marks give 0.141 m, whatever the angle. */
    @ParameterizedTest
    @ValueSource(doubles = {20, 72, 140})
    void pointsOfThePercentScaleWeighTheSameEverywhere(double top) {
        HeightErrors points = new HeightErrors(AngleError.ofScaleUnits(0.5), 0, 0);
        Sighting s = new HorizontalSighting(new Readings(AngleScale.PERCENT, top, -6), 20);
        Tolerance.printed(3).check(0.141, points.heightSd(s), "sd (m)");
    }

    /** By definition a unit of the degree scale is a degree. */
    @Test
    void unitsOfTheDegreeScaleAreAngles() {
        Sighting s = new HorizontalSighting(new Readings(AngleScale.DEGREES, 41, -3.5), 25);
        double units = ERRORS.withAngle(AngleError.ofScaleUnits(0.25)).heightSd(s);
        Tolerance.ROUNDING.check(ERRORS.heightSd(s), units, "sd (m)");
    }

    /** One set of readings and distances, from which each way of sighting can be made again with one of them changed. */
    private record Case(String name, double[] values) {
        Sighting sighting() {
            return at(values);
        }

        Sighting at(double[] v) {
            Readings r = new Readings(AngleScale.DEGREES, Math.toDegrees(v[2]), Math.toDegrees(v[3]));
            return switch (name) {
                case "horizontal" -> new HorizontalSighting(r, v[0]);
                case "ground" -> new GroundSlopeSighting(r, v[0], new Slope(Math.tan(v[4])));
                case "eye to base" -> new EyeToBaseSighting(r, v[0]);
                default -> new LaserSighting(r, v[1], v[0]);
            };
        }

        @Override
        public String toString() {
            return name + DoubleStream.of(values).boxed().toList();
        }
    }

    /** Base below the eye, both marks above, both below: distance, top distance, top, base (degrees), ground. */
    static Stream<Case> cases() {
        List<double[]> values = List.of(
                new double[] {32, 41, 42, -9, 11}, new double[] {25, 47, 50, 12, 17}, new double[] {30, 26, -5, -31, -14
                });
        return Stream.of("horizontal", "ground", "eye to base", "laser")
                .flatMap(name -> values.stream().map(v -> new Case(name, radians(v))));
    }

    private static double[] radians(double[] v) {
        return new double[] {v[0], v[1], Math.toRadians(v[2]), Math.toRadians(v[3]), Math.toRadians(v[4])};
    }

    /** Each partial derivative against a central difference of the height itself. */
    @ParameterizedTest
    @MethodSource("cases")
    void derivativesAreThoseOfTheHeight(Case c) {
        Sensitivity by = c.sighting().sensitivity();
        double[] stated = {by.distance(), by.topDistance(), by.topAngle(), by.baseAngle(), by.groundSlope()};
        double step = 1e-5;
        for (int i = 0; i < stated.length; i++) {
            double[] up = c.values().clone();
            double[] down = c.values().clone();
            up[i] += step;
            down[i] -= step;
            double quotient = (c.at(up).height() - c.at(down).height()) / (2 * step);
            Tolerance.absolute("central difference over 2e-5", 1e-6).check(quotient, stated[i], c + " by value " + i);
        }
    }

    /** The error by formula against the spread of heights read with errors, over fixed seeds. */
    @ParameterizedTest
    @MethodSource("cases")
    void errorsAgreeWithSimulation(Case c) {
        int n = 40_000;
        RandomGenerator random = new SplittableRandom(61);
        double[] sd = {
            ERRORS.distanceSd(),
            ERRORS.distanceSd(),
            ERRORS.angle().sd(),
            ERRORS.angle().sd(),
            ERRORS.slopeSd()
        };
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double[] v = c.values().clone();
            for (int j = 0; j < v.length; j++) {
                v[j] += sd[j] * random.nextGaussian();
            }
            double off = c.at(v).height() - c.sighting().height();
            sum += off;
            squares += off * off;
        }
        double simulated = Math.sqrt((squares - sum * sum / n) / (n - 1));
        // the relative standard error of an sd is 1/√(2n)
        Tolerance.relative("four Monte Carlo errors", 4 / Math.sqrt(2.0 * n))
                .check(ERRORS.heightSd(c.sighting()), simulated, c + " sd (m)");
    }

    @Test
    void defaultsAreThoseStatedAndCanBeChanged() {
        Tolerance.ROUNDING.check(Math.toRadians(0.25), ERRORS.angle().sd(), "angle (radians)");
        assertEquals(0.10, ERRORS.distanceSd());
        Tolerance.ROUNDING.check(Math.toRadians(0.5), ERRORS.slopeSd(), "slope (radians)");
        HeightErrors other =
                ERRORS.withAngle(AngleError.ofAngle(0.01)).withDistanceSd(0.3).withSlopeSd(0.02);
        assertEquals(new HeightErrors(AngleError.ofAngle(0.01), 0.3, 0.02), other);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void errorsAreNotNegative(double sd) {
        assertThrows(IllegalArgumentException.class, () -> AngleError.ofAngle(sd));
        assertThrows(IllegalArgumentException.class, () -> ERRORS.withDistanceSd(sd));
        assertThrows(IllegalArgumentException.class, () -> ERRORS.withSlopeSd(sd));
    }

    private static Sighting level(double height, double eye, double distance) {
        AngleScale scale = AngleScale.PERCENT;
        double top = scale.reading((height - eye) / distance);
        return new HorizontalSighting(new Readings(scale, top, scale.reading(-eye / distance)), distance);
    }
}
