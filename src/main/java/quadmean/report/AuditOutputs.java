package quadmean.report;

import java.util.LinkedHashMap;
import java.util.Map;
import quadmean.audit.AuditRun;
import quadmean.audit.CheckCruise;

/** The files that a check cruise is reported in. */
public final class AuditOutputs {
    private AuditOutputs() {}

    /** Content by file name, the page for people first. */
    public static Map<String, Content> of(AuditRun run, CheckCruise check) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("audit.html", AuditPage.of(run, check));
        files.put("audit.json", AuditJson.of(run, check));
        files.put("audit-trees.csv", AuditCsv.trees(check));
        files.put("audit-plots.csv", AuditCsv.plots(check));
        files.put("problems.csv", ProblemsCsv.of(run.problems()));
        return files;
    }
}
