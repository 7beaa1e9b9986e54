package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.PlotShares;
import quadmean.estimate.PlotsNeeded;
import quadmean.estimate.StratumPlots;

/** Plots needed as a file: for each attribute and way of sharing plots one row a stratum, then all strata together. */
final class PlotsNeededCsv {
    private static final List<String> HEADER = List.of(
            "attribute",
            "allocation",
            "stratum",
            "run",
            "needed",
            "still_to_run",
            "sampling_error_percent_now",
            "expected_error_percent",
            "assurance",
            "plots_for_80_percent_assurance",
            "plots_for_90_percent_assurance",
            "remark");

    private PlotsNeededCsv() {}

    static Content of(CruiseResult result) {
        List<List<String>> rows = new ArrayList<>();
        for (PlotsNeeded needed : result.estimate().needed()) {
            needed.shares().forEach(shares -> add(rows, needed, shares));
            if (needed.shares().isEmpty()) {
                rows.add(unknown(result, needed));
            }
        }
        return Csv.of(HEADER, rows.stream());
    }

    private static void add(List<List<String>> rows, PlotsNeeded needed, PlotShares shares) {
        String attribute = needed.attribute().id();
        String allocation = shares.allocation().label();
        if (shares.strata().size() > 1) {
            for (StratumPlots s : shares.strata()) {
                rows.add(List.of(
                        attribute,
                        allocation,
                        s.stratum(),
                        Integer.toString(s.run()),
                        Integer.toString(s.needed()),
                        Integer.toString(s.more()),
                        "",
                        "",
                        "",
                        "",
                        "",
                        ""));
            }
        }
        rows.add(List.of(
                attribute,
                allocation,
                EstimateRow.ALL,
                Integer.toString(shares.run()),
                Integer.toString(shares.needed()),
                Integer.toString(shares.more()),
                Csv.number(needed.achievedPercent()),
                Csv.number(shares.expectedErrorPercent()),
                Csv.number(shares.assurance()),
                text(shares.plotsFor80()),
                text(shares.plotsFor90()),
                needed.remark()));
    }

    private static List<String> unknown(CruiseResult result, PlotsNeeded needed) {
        return List.of(
                needed.attribute().id(),
                "",
                EstimateRow.ALL,
                Integer.toString(needed.plots()),
                text(needed.needed()),
                text(needed.more()),
                Csv.number(needed.achievedPercent()),
                "",
                "",
                "",
                "",
                EstimateJson.unknown(result, needed));
    }

    private static String text(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }
}
