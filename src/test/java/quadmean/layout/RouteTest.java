package quadmean.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import quadmean.design.LayoutSettings;
import quadmean.design.LayoutSettings.Walking;

class RouteTest {
    private static final Coordinate START = new Coordinate(0, 0);

    private static Walking day(double hours) {
        return new Walking(List.of(), OptionalDouble.empty(), LayoutSettings.Slopes.NONE, 2000, 0.25, hours);
    }

    private static List<Coordinate> places(int n, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return IntStream.range(0, n)
                .mapToObj(i -> new Coordinate(random.nextDouble() * 1000, random.nextDouble() * 700))
                .toList();
    }

    /** Shortest closed walk of all orders. */
    private static double shortest(List<Coordinate> left, Coordinate at) {
        if (left.isEmpty()) {
            return at.distance(START);
        }
        double best = Double.POSITIVE_INFINITY;
        for (Coordinate next : left) {
            List<Coordinate> others = new ArrayList<>(left);
            others.remove(next);
            best = Math.min(best, at.distance(next) + shortest(others, next));
        }
        return best;
    }

    /** Against all orders of 7 plots: never shorter, the best in most of 200 cases, and never 10 % longer. */
    @Test
    void smallWalksAreTheBestOrNearlySo() {
        int found = 0;
        for (long seed = 1; seed <= 200; seed++) {
            List<Coordinate> plots = places(7, seed);
            double best = shortest(plots, START);
            double length = Route.of(plots, START, day(24), 100, 0).lengthM();
            assertTrue(length >= best - 1e-6, "shorter than the shortest, seed " + seed);
            assertTrue(length <= 1.1 * best, "seed " + seed + ": " + length / best);
            found += length <= best + 1e-6 ? 1 : 0;
        }
        assertTrue(found >= 180, found + " of 200");
    }

    @ParameterizedTest
    @CsvSource({"1, 8", "2, 3", "12, 2", "40, 4", "90, 24"})
    void neverLongerThanTheSerpentineAndEveryPlotOnce(int n, double hours) {
        for (long seed = 1; seed <= 40; seed++) {
            Route route = Route.of(places(n, seed), START, day(hours), 120, 7.0 * seed);
            assertTrue(route.lengthM() <= route.serpentineM() + 1e-6, "seed " + seed);
            assertEquals(
                    IntStream.range(0, n).boxed().toList(),
                    route.order().stream().sorted().toList());
        }
    }

    /** The day that is turned around must not cross itself: no day gets shorter when any two of its ways are exchanged. */
    @Test
    void noExchangeOfTwoWaysMakesADayShorter() {
        for (long seed = 1; seed <= 20; seed++) {
            List<Coordinate> plots = places(60, seed);
            for (List<Integer> day : Route.of(plots, START, day(8), 120, 0).days()) {
                List<Coordinate> walk = new ArrayList<>(List.of(START));
                day.forEach(i -> walk.add(plots.get(i)));
                walk.add(START);
                for (int i = 0; i + 1 < walk.size(); i++) {
                    for (int j = i + 1; j + 1 < walk.size(); j++) {
                        Coordinate a = walk.get(i);
                        Coordinate b = walk.get(i + 1);
                        Coordinate c = walk.get(j);
                        Coordinate d = walk.get(j + 1);
                        assertTrue(
                                a.distance(c) + b.distance(d) >= a.distance(b) + c.distance(d) - 1e-6,
                                "seed " + seed + ": ways " + i + " and " + j);
                    }
                }
            }
        }
    }

    /** 5000 plots, the most there may be, at random on a square of side s: the shortest walk is about 0.7124·√(n·A) (from memory). */
    @Test
    @Timeout(20)
    void fiveThousandPlotsTakeSeconds() {
        SplittableRandom random = new SplittableRandom(1);
        List<Coordinate> plots = IntStream.range(0, 5000)
                .mapToObj(i -> new Coordinate(random.nextDouble() * 10_000, random.nextDouble() * 10_000))
                .toList();
        Route route = Route.of(
                plots,
                START,
                new Walking(List.of(), OptionalDouble.empty(), LayoutSettings.Slopes.NONE, 1e6, 0, 24),
                200,
                0);
        double best = 0.7124 * Math.sqrt(5000) * 10_000;
        assertTrue(route.lengthM() < 1.1 * best, "over the best: " + route.lengthM() / best);
        assertTrue(route.lengthM() > 0.97 * best, "over the best: " + route.lengthM() / best);
    }

    /** A line of plots 100 m apart: hours of a day are 2·distance/2000 + 0.25 a plot, worked by hand. */
    @Test
    void daysHoldWhatTheirHoursAllow() {
        List<Coordinate> line = IntStream.rangeClosed(1, 6)
                .mapToObj(i -> new Coordinate(100.0 * i, 0))
                .toList();
        // all six: 1200 m = 0.6 h and 1.5 h of plots; in 1.2 h from the near end: 3 (0.3 + 0.75), then 2 (0.5 + 0.5),
        // then 1 (0.6 + 0.25);
        // from the far end: plots 6 and 5 (0.6 + 0.5), then 4, 3 and 2 (0.4 + 0.75), then 1; 1200 + 800 + 200 m against
        // 600 + 1000 + 1200 m
        assertEquals(1, Route.of(line, START, day(2.1), 50, 0).days().size());
        Route route = Route.of(line, START, day(1.2), 50, 0);
        assertEquals(List.of(2, 3, 1), route.days().stream().map(List::size).toList());
        assertEquals(2200, route.lengthM(), 1e-9);
    }

    @Test
    void aDayThatCannotHoldOnePlotIsSaid() {
        Route route = Route.of(List.of(new Coordinate(6000, 0)), START, day(6), 50, 0);
        assertEquals(1, route.days().size());
        assertTrue(
                route.notes().stream().anyMatch(n -> n.contains("cannot hold")),
                route.notes().toString());
    }

    /** Compass bearing = true bearing less the declination, east positive (definition). */
    @ParameterizedTest
    @CsvSource({"90, 14, 76", "5, 14, 351", "355, -10, 5", "0, 0, 0"})
    void compassBearings(double bearing, double declination, double compass) {
        assertEquals(compass, SheetMaker.compass(bearing, declination), 1e-12);
    }
}
