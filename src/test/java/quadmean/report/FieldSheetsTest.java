package quadmean.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quadmean.chart.MapChart;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.support.SampleTract;

class FieldSheetsTest {
    @Test
    void look() throws IOException {
        for (String name : new String[] {
            "demo", "idaho-points", "two-factors", "count-points", "strip", "mirage", "threep", "complete"
        }) {
            Design d = DesignReader.read(Path.of("designs", name + ".toml")).design();
            Files.createDirectories(Path.of("target/sheets"));
            Files.writeString(
                    Path.of("target/sheets/" + name + ".html"),
                    FieldSheets.page(d, SampleTract.set(), Optional.of(MapChart.picture(SampleTract.map(d.units())))));
        }
    }
}
