package quadmean.report;

import java.util.List;
import quadmean.cruise.CruiseResult;

/** How logs were cut and measured and trees weighed, in sentences. */
final class WoodStatement {
    private WoodStatement() {}

    static List<String> of(CruiseResult result) {
        return List.of();
    }

    static List<String> weight(CruiseResult result) {
        return List.of();
    }
}
