package quadmean.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.layout.BoundaryReader;
import quadmean.layout.StratumArea;
import quadmean.layout.Tract;
import quadmean.layout.TractReading;
import quadmean.support.Tolerance;

/** The boundary of the demonstration stand is what its generator makes, and has the areas of the design. */
class DemoTractTest {
    private static final Path BOUNDARY = Path.of("datasets/demo-tract.geojson");
    private static final Tolerance HALF_PERCENT = Tolerance.relative("what the boundary was drawn to", 0.005);

    private Tract tract() throws IOException {
        Design read = DesignReader.read(Path.of("designs/demo.toml")).design();
        assertNotNull(read);
        TractReading reading = BoundaryReader.read(read);
        assertEquals(List.of(), reading.problems());
        assertNotNull(reading.tract());
        return reading.tract();
    }

    @Test
    void theShippedBoundaryIsWhatTheGeneratorMakes() throws IOException {
        assertEquals(DemoTract.geoJson(), Files.readString(BOUNDARY));
    }

    @Test
    void strataHaveTheAreasOfTheDesign() throws IOException {
        for (StratumArea area : tract().areas()) {
            HALF_PERCENT.check(area.designHa(), area.mapHa(), area.code());
        }
    }

    @Test
    void theLakeIsNoPartOfTheTract() throws IOException {
        Tract tract = tract();
        Polygon bench = (Polygon) tract.parts().get(1).shape();
        assertEquals(1, bench.getNumInteriorRing());
        assertEquals(1, ((Polygon) tract.outline()).getNumInteriorRing());
    }
}
