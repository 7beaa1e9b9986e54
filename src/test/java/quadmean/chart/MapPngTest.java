package quadmean.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.chart.TractMap.Point;
import quadmean.support.SampleTract;
import quadmean.units.UnitSystem;

/** The image of the map, read back, has at each place what the map has there. */
class MapPngTest {
    private static final TractMap MAP = SampleTract.map(UnitSystem.US);
    private static final Picture PICTURE = MapChart.picture(MAP);

    private static BufferedImage image() throws IOException {
        BufferedImage image =
                ImageIO.read(new ByteArrayInputStream(MapPng.of(PICTURE).orElseThrow()));
        assertEquals("width 1440", "width " + image.getWidth());
        return image;
    }

    private static Color at(BufferedImage image, Point place) {
        MapFrame frame = MapFrame.around(MAP);
        return new Color(image.getRGB((int) (2 * frame.x(place)), (int) (2 * frame.y(place))));
    }

    @Test
    void placesHaveTheirColours() throws IOException {
        BufferedImage image = image();
        assertEquals(new Color(0x22, 0x2b, 0x26), at(image, MAP.plots().get(1).at()), "a plot");
        assertEquals(Color.WHITE, at(image, MAP.plots().get(0).at()), "a plot near an edge is open");
        assertEquals(new Color(0xa2, 0x3b, 0x00), at(image, MAP.start().at()), "the start");
        assertEquals(Color.WHITE, at(image, new Point(410, 205)), "the lake");
        assertEquals(Color.decode(MapHatch.tint(0)), at(image, new Point(110, 100)), "ground of the first stratum");
        assertEquals(Color.WHITE, new Color(image.getRGB(3, 3)), "paper");
    }

    /** The second stratum is hatched: on a patch without plots there is its tint and something darker, and nothing else than a mix. */
    @Test
    void hatchingIsDrawn() throws IOException {
        BufferedImage image = image();
        MapFrame frame = MapFrame.around(MAP);
        Color tint = Color.decode(MapHatch.tint(1));
        int x = (int) (2 * frame.x(new Point(505, 310)));
        int y = (int) (2 * frame.y(new Point(505, 310)));
        int plain = 0;
        int dark = 0;
        for (int i = -20; i <= 20; i++) {
            Color c = new Color(image.getRGB(x + i, y));
            plain += c.equals(tint) ? 1 : 0;
            dark += c.getRed() < tint.getRed() - 60 ? 1 : 0;
        }
        assertTrue(plain > 20 && dark >= 2, plain + " plain, " + dark + " dark");
    }

    @Test
    void theSameBytesEveryTime() {
        assertArrayEquals(MapPng.of(PICTURE).orElseThrow(), MapPng.of(PICTURE).orElseThrow());
    }

    /** What the image could not show is refused, not left out. */
    @ParameterizedTest
    @ValueSource(strings = {"<image/>", "<path d=\"M0 0 C1 1 2 2 3 3\"/>", "<path d=\"M0 0\""})
    void anythingElseIsRefused(String element) {
        String svg = "<svg viewBox=\"0 0 9 9\" fill=\"#000000\">" + element + "</svg>";
        assertThrows(IllegalArgumentException.class, () -> MapPng.of(new Picture("map", "", "", svg)));
    }
}
