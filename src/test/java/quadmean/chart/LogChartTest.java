package quadmean.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.support.SmallWoodlot;

class LogChartTest {
    @TempDir
    private Path folder;

    private static List<Picture> pictures(ChartSet charts) {
        return charts.pictures().stream()
                .filter(p -> p.id().startsWith("wood-by-"))
                .toList();
    }

    @Test
    void drawsNetWoodByProductAndByLogAsWellFormedXml() throws Exception {
        List<Picture> pictures = pictures(ChartSet.of(new SmallWoodlot().run(folder)));
        assertEquals(
                List.of("wood-by-product", "wood-by-log"),
                pictures.stream().map(Picture::id).toList());
        for (Picture picture : pictures) {
            DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(picture.svg().getBytes(StandardCharsets.UTF_8)));
            assertTrue(picture.title().startsWith("Net board feet per acre by "), picture.title());
            assertTrue(picture.title().contains("invented"), picture.title());
        }
    }

    @Test
    void withoutALogDrawsNone() {
        assertEquals(
                List.of(),
                pictures(ChartSet.of(new SmallWoodlot()
                        .with("min_small_end = 8", "min_small_end = 80")
                        .with("min_small_end = 4", "min_small_end = 80")
                        .run(folder))));
    }
}
