package quadmean.report;

import java.util.List;
import java.util.stream.IntStream;
import quadmean.cruise.CruiseResult;
import quadmean.height.HeightedTree;
import quadmean.units.Unit;
import quadmean.volume.TreeWood;

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
            "scatter_sd_m",
            "volume_m3",
            "volume_ft3",
            "board_feet",
            "logs",
            "defect_percent",
            "green_kg",
            "dry_kg",
            "carbon_kg");

    private TreesCsv() {}

    static Content of(CruiseResult result) {
        return Csv.of(
                HEADER,
                IntStream.range(0, result.trees().size())
                        .mapToObj(i -> row(result.trees().get(i), result.wood().get(i))));
    }

    private static List<String> row(HeightedTree t, TreeWood wood) {
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
                Csv.number(t.scatterSdM()),
                Csv.number(wood.volumeM3()),
                Csv.number(Unit.CUBIC_METRE.convert(wood.volumeM3(), Unit.CUBIC_FOOT)),
                Csv.number(wood.boardFeet()),
                Integer.toString(wood.logs().size()),
                Csv.number(100 * t.tree().detail().defect()),
                Csv.number(wood.greenKg()),
                Csv.number(wood.dryKg()),
                Csv.number(wood.carbonKg()));
    }
}
