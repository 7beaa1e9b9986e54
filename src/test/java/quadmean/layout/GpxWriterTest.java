package quadmean.layout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Route;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import quadmean.support.SampleTract;
import quadmean.support.Tolerance;

class GpxWriterTest {
    private static byte[] written(String name, SheetSet set) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        GpxWriter.write(name, "Plots, seed 7", set.plots(), set.route(), out);
        return out.toByteArray();
    }

    /** Round trip: what the library reads back is what was laid out, to the seven decimals that are written. */
    @Test
    void theLibraryReadsItBack() throws IOException {
        SheetSet set = SampleTract.set();
        GPX gpx = GPX.Reader.of(GPX.Reader.Mode.STRICT).read(new ByteArrayInputStream(written("A & <b>", set)));
        assertEquals("A & <b>", gpx.getMetadata().flatMap(m -> m.getName()).orElse(""));
        List<WayPoint> points = gpx.getWayPoints();
        assertEquals(set.plots().size() + 1, points.size(), "plots and the start");
        for (int i = 0; i < set.plots().size(); i++) {
            SheetPlot plot = set.plots().get(i);
            WayPoint point = points.get(i + 1);
            assertEquals(plot.number(), point.getName().orElse(""));
            Tolerance.printed(7)
                    .check(plot.place().latitude(), point.getLatitude().doubleValue(), "latitude");
            Tolerance.printed(7)
                    .check(plot.place().longitude(), point.getLongitude().doubleValue(), "longitude");
        }
        assertTrue(points.get(1).getDescription().orElse("").endsWith("near the edge"));
    }

    @Test
    void eachDayIsARouteFromTheStartAndBack() throws IOException {
        SheetSet set = SampleTract.set();
        GPX gpx = GPX.Reader.DEFAULT.read(new ByteArrayInputStream(written("A", set)));
        assertEquals(2, gpx.getRoutes().size());
        for (Route day : gpx.getRoutes()) {
            List<WayPoint> points = day.getPoints();
            assertEquals(14, points.size(), "start, twelve plots, start");
            assertEquals(SampleTract.START, points.get(0).getName().orElse(""));
            assertEquals(SampleTract.START, points.get(13).getName().orElse(""));
        }
        assertEquals("Day 2", gpx.getRoutes().get(1).getName().orElse(""));
    }

    @Test
    void bytesDoNotDependOnTheClock() throws IOException {
        byte[] once = written("A", SampleTract.set());
        assertArrayEquals(once, written("A", SampleTract.set()));
        assertFalse(new String(once, StandardCharsets.UTF_8).contains("<time"));
    }

    @Test
    void controlCharactersDoNotBreakTheFile() throws IOException {
        GPX gpx = GPX.Reader.DEFAULT.read(new ByteArrayInputStream(written("A\u0001B", SampleTract.set())));
        assertEquals("A\uFFFDB", gpx.getMetadata().flatMap(m -> m.getName()).orElse(""));
    }

    /** On a plane without a place on the globe there is nothing to write. */
    @Test
    void placesWithoutLongitudeAreRefused() {
        SheetSet set = SampleTract.onPlane();
        assertThrows(
                IllegalArgumentException.class,
                () -> GpxWriter.write("A", "", set.plots(), set.route(), new ByteArrayOutputStream()));
    }

    @Test
    void aLegToNowhereIsRefused() {
        SheetSet set = SampleTract.set();
        SheetRoute route = new SheetRoute(
                SampleTract.start(),
                SampleTract.START,
                List.of(new SheetRoute.Leg(1, SampleTract.START, "99", 0, 0, 1, 1, SheetRoute.Way.OPEN)),
                List.of());
        assertThrows(
                IllegalArgumentException.class,
                () -> GpxWriter.write("A", "", set.plots(), route, new ByteArrayOutputStream()));
    }
}
