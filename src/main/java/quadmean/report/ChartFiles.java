package quadmean.report;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.chart.Picture;

/** Each chart as a file of its own, to be put into other papers: PNG, or SVG for what is drawn in SVG alone. */
final class ChartFiles {
    private ChartFiles() {}

    /** Content by file name, such as {@code chart-heights.png}. */
    static Map<String, Content> of(List<Picture> pictures) {
        Map<String, Content> files = new LinkedHashMap<>();
        for (Picture picture : pictures) {
            String name = "chart-" + picture.id();
            picture.raster()
                    .ifPresentOrElse(
                            raster -> files.put(name + ".png", out -> out.write(raster.png())),
                            () -> files.put(
                                    name + ".svg",
                                    out -> out.write((picture.svg() + "\n").getBytes(StandardCharsets.UTF_8))));
        }
        return files;
    }
}
