package quadmean.report;

import java.util.LinkedHashMap;
import java.util.Map;
import quadmean.chart.ChartSet;
import quadmean.volume.VolumeFits;

/** The files that fitted volume equations are reported in. */
public final class VolumeFitOutputs {
    private VolumeFitOutputs() {}

    /**
     * Content by file name, the page for people first.
     *
     * @param charts the charts of the same fits
     */
    public static Map<String, Content> of(VolumeFits fits, ChartSet charts) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("fit-volume.html", VolumeFitPage.of(fits, charts));
        files.put("volume.toml", VolumeFitToml.of(fits));
        files.put("fit-volume.json", VolumeFitJson.of(fits));
        files.put("fit-volume.csv", VolumeFitCsv.of(fits));
        files.put("problems.csv", ProblemsCsv.of(fits.data().problems()));
        return files;
    }
}
