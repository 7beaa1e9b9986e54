package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quadmean.cruise.CruiseResult;
import quadmean.model.Tree;
import quadmean.units.Unit;
import quadmean.volume.CutLog;

/** Each log cut on paper, with where it lies in its tree and what is in it. */
final class LogsCsv {
    private static final List<String> HEADER = List.of(
            "file",
            "row",
            "plot",
            "number",
            "species",
            "trees",
            "log",
            "product",
            "from_m",
            "from_ft",
            "length_m",
            "length_ft",
            "large_end_dib_cm",
            "large_end_dib_in",
            "small_end_dib_cm",
            "small_end_dib_in",
            "gross_m3",
            "gross_ft3",
            "net_m3",
            "net_ft3",
            "gross_bf",
            "net_bf",
            "defect_percent");

    private static final double PER_UNIT = 1e6;

    private LogsCsv() {}

    static Content of(CruiseResult result) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < result.trees().size(); i++) {
            Tree tree = result.trees().get(i).tree();
            result.wood().get(i).logs().stream()
                    .filter(log -> !log.isUnknown())
                    .forEach(log -> rows.add(row(tree, log)));
        }
        List<String> header = new ArrayList<>(HEADER);
        header.add(result.design()
                .wood()
                .prices()
                .map(p -> "value_" + p.currency().toLowerCase(Locale.ROOT))
                .orElse("value"));
        return Csv.of(header, rows.stream());
    }

    private static List<String> row(Tree tree, CutLog log) {
        return List.of(
                tree.file(),
                Long.toString(tree.row()),
                tree.plot(),
                tree.number(),
                tree.species(),
                Integer.toString(tree.detail().count()),
                Integer.toString(log.number()),
                log.product(),
                Csv.number(micrometres(log.fromM())),
                feet(log.fromM()),
                Csv.number(micrometres(log.lengthM())),
                feet(log.lengthM()),
                Csv.number(log.largeEndCm()),
                inches(log.largeEndCm()),
                Csv.number(log.smallEndCm()),
                inches(log.smallEndCm()),
                Csv.number(log.cubicM3()),
                cubicFeet(log.cubicM3()),
                Csv.number(log.netM3()),
                cubicFeet(log.netM3()),
                Csv.number(log.boardFeet()),
                Csv.number(log.netBoardFeet()),
                Csv.number(100 * log.defect()),
                Csv.number(log.value()));
    }

    private static String feet(double metres) {
        return Csv.number(micrometres(Unit.METRE.convert(metres, Unit.FOOT)));
    }

    /** Cuts lie on whole micrometres; what is finer is the rounding of doubles. Feet are cut as finely. */
    private static double micrometres(double length) {
        return Math.rint(length * PER_UNIT) / PER_UNIT;
    }

    private static String inches(double cm) {
        return Csv.number(Unit.CENTIMETRE.convert(cm, Unit.INCH));
    }

    private static String cubicFeet(double m3) {
        return Csv.number(Unit.CUBIC_METRE.convert(m3, Unit.CUBIC_FOOT));
    }
}
