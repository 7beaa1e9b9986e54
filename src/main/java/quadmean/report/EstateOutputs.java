package quadmean.report;

import java.util.LinkedHashMap;
import java.util.Map;
import quadmean.cruise.EstateResult;

/** The files that an estate makes. */
public final class EstateOutputs {
    private EstateOutputs() {}

    /**
     * All files by name.
     *
     * @param problems the list of problems
     */
    public static Map<String, Content> of(EstateResult result, Content problems) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("stands.csv", StandsCsv.of(result));
        files.put("curves.csv", FillingCurvesCsv.of(result));
        files.put("problems.csv", problems);
        return files;
    }
}
