package quadmean.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import quadmean.cruise.CurvesRun;
import quadmean.height.CurveFit;
import quadmean.height.CurveTable;
import quadmean.height.PlotCalibration;
import quadmean.height.SpeciesCurve;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The league tables of height curves as plain text, for the console. */
public final class CurveSummary {
    private CurveSummary() {}

    /**
     * A block of lines for each species, group and all species together: what is used, then every form by its error. At the
     * end the trees whose heights would help most.
     */
    public static List<String> of(CurvesRun.Result result) {
        UnitSystem units = result.design().units();
        List<String> lines = league(result.curves(), units.length());
        if (!result.more().isEmpty()) {
            lines.add("Which further heights would help most. " + AdviceTable.MEANING);
            AdviceTable.lines(result.more(), units).forEach(l -> lines.add("  " + l));
        }
        return lines;
    }

    private static List<String> league(CurveTable curves, Unit unit) {
        List<String> lines = new ArrayList<>();
        for (SpeciesCurve search : curves.searches()) {
            lines.add(CurveTables.name(search) + ": " + search.reason() + ".");
            PlotCalibration calibration = search.calibration();
            if (calibration != null) {
                lines.add("  " + calibration.words() + ".");
            }
            if (!search.fits().isEmpty()) {
                lines.add(String.format(
                        Locale.ROOT,
                        "  %-20s %12s %10s  %s",
                        "form",
                        "leave-1-out",
                        "sigma",
                        "status (errors in " + unit.symbol() + ", " + search.heights() + " heights)"));
            }
            search.fits().stream()
                    .sorted(Comparator.comparingDouble(CurveFit::leaveOneOutError))
                    .forEach(f -> lines.add(line(search, f)));
            lines.add("");
        }
        return lines;
    }

    private static String line(SpeciesCurve search, CurveFit tried) {
        String status = tried.status().label() + (Facts.isChosen(search, tried) ? ", chosen" : "");
        String remark = tried.remark().isEmpty() ? "" : ": " + tried.remark();
        String numbers = tried.fit() == null
                ? String.format(Locale.ROOT, "%12s %10s", "-", "-")
                : String.format(
                        Locale.ROOT,
                        "%12.3f %10.3f",
                        tried.leaveOneOutError(),
                        tried.fit().sigma());
        return String.format(Locale.ROOT, "  %-20s %s  %s", tried.form().label(), numbers, status + remark);
    }
}
