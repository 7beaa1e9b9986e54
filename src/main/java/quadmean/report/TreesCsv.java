package quadmean.report;

import java.util.List;
import quadmean.cruise.CruiseResult;
import quadmean.height.HeightedTree;
import quadmean.units.Unit;

/** Each tree with its height and where that came from. */
final class TreesCsv {
    private static final List<String> HEADER = List.of(
            "file",
            "row",
            "plot",
            "number",
            "species",
            "dbh_cm",
            "dbh_in",
            "height_m",
            "height_ft",
            "height_source",
            "extrapolated",
            "curve_se_m",
            "scatter_sd_m");

    private TreesCsv() {}

    static Content of(CruiseResult result) {
        return Csv.of(HEADER, result.trees().stream().map(TreesCsv::row));
    }

    private static List<String> row(HeightedTree t) {
        return List.of(
                t.tree().file(),
                Long.toString(t.tree().row()),
                t.tree().plot(),
                t.tree().number(),
                t.tree().species(),
                Csv.number(t.tree().dbhCm()),
                Csv.number(Unit.CENTIMETRE.convert(t.tree().dbhCm(), Unit.INCH)),
                Csv.number(t.heightM()),
                Csv.number(Unit.METRE.convert(t.heightM(), Unit.FOOT)),
                t.source().id(),
                Facts.isExtrapolated(t) ? "yes" : "no",
                Csv.number(t.curveSeM()),
                Csv.number(t.scatterSdM()));
    }
}
