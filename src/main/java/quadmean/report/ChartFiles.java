package quadmean.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.chart.MapPng;
import quadmean.chart.Picture;

/** Each chart as a file of its own, to be put into other papers. */
final class ChartFiles {
    private ChartFiles() {}

    /** Content by file name, such as {@code chart-heights.png}; none for what cannot be drawn for want of fonts. */
    static Map<String, Content> of(List<Picture> pictures) {
        Map<String, Content> files = new LinkedHashMap<>();
        for (Picture picture : pictures) {
            String name = "chart-" + picture.id() + ".png";
            picture.raster()
                    .ifPresentOrElse(
                            raster -> files.put(name, out -> out.write(raster.png())),
                            () -> MapPng.of(picture).ifPresent(png -> files.put(name, out -> out.write(png))));
        }
        return files;
    }
}
