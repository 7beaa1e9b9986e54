package quadmean.report;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import quadmean.chart.ChartSet;
import quadmean.volume.FelledSections;
import quadmean.volume.VolumeFits;

/** The files that fitted volume equations are reported in. */
public final class VolumeFitOutputs {
    private VolumeFitOutputs() {}

    /**
     * Content by file name, the page for people first.
     *
     * @param charts the charts of the same fits
     * @param sections the sections of the stems, where volumes were summed
     */
    public static Map<String, Content> of(VolumeFits fits, ChartSet charts, Optional<FelledSections> sections) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("fit-volume.html", VolumeFitPage.of(fits, charts, sections));
        files.put("volume.toml", VolumeFitToml.of(fits));
        files.put("fit-volume.json", VolumeFitJson.of(fits));
        files.put("fit-volume.csv", VolumeFitCsv.of(fits));
        sections.ifPresent(s -> files.put("sections.csv", SectionsCsv.of(s)));
        files.putAll(ChartFiles.of(charts.pictures()));
        files.put("problems.csv", ProblemsCsv.of(fits.data().problems()));
        return files;
    }
}
