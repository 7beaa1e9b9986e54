package quadmean.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import quadmean.cruise.EstateResult;
import quadmean.estimate.EstateEstimator;
import quadmean.estimate.EstimateRow;
import quadmean.model.EstateStand;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The table of stands with their estimates and errors, a row for each stand, in the units of the design. */
final class StandsCsv implements Content {
    private static final int CELLS_PER_ATTRIBUTE = 7;

    private final EstateResult result;
    private final UnitSystem units;

    private StandsCsv(EstateResult result) {
        this.result = result;
        this.units = result.design().units();
    }

    static Content of(EstateResult result) {
        return new StandsCsv(result);
    }

    @Override
    public void writeTo(OutputStream out) throws IOException {
        Csv.writeTo(out, header(), result.stands().size(), i -> List.of(row(i)));
    }

    private List<String> header() {
        List<String> cells = new ArrayList<>(
                List.of("stand", "region", "stratum", "area_" + units.area().symbol(), "plots"));
        for (Attribute attribute : result.design().attributes()) {
            String perArea = attribute.id() + "_" + unit(attribute, Basis.PER_AREA);
            cells.add(perArea);
            cells.add(perArea + "_se");
            cells.add(perArea + "_lower");
            cells.add(perArea + "_upper");
            cells.add(attribute.id() + "_error_percent");
            cells.add(attribute.id() + "_total_" + unit(attribute, Basis.TOTAL));
            cells.add(attribute.id() + "_total_" + unit(attribute, Basis.TOTAL) + "_se");
        }
        cells.add("quadratic_mean_diameter_"
                + Attribute.QUADRATIC_MEAN_DIAMETER.unit(Basis.RATIO, units).symbol());
        cells.add("reason");
        return cells;
    }

    private String unit(Attribute attribute, Basis basis) {
        return attribute.unit(basis, units).symbol().replace("/", "_per_");
    }

    private List<String> row(int i) {
        EstateEstimator stands = result.stands();
        EstateStand stand = stands.stand(i);
        List<String> cells = new ArrayList<>(List.of(
                Csv.guarded(stand.code()),
                Csv.guarded(stand.region()),
                Csv.guarded(stand.stratum()),
                Csv.number(Unit.HECTARE.convert(stand.areaHa(), units.area())),
                Integer.toString(stands.plots(i))));
        if (stands.plots(i) == 0) {
            for (int k = CELLS_PER_ATTRIBUTE * result.design().attributes().size(); k >= 0; k--) {
                cells.add("");
            }
            cells.add("no plots");
            return cells;
        }
        List<EstimateRow> rows = stands.rows(i, EstimateRow.ALL);
        for (int k = 0; k + 1 < rows.size(); k += 2) {
            add(rows.get(k), rows.get(k + 1), cells);
        }
        EstimateRow diameter = rows.get(rows.size() - 1);
        cells.add(Csv.number(diameter.in(units, diameter.mean())));
        cells.add(rows.stream()
                .map(EstimateRow::reason)
                .filter(r -> !r.isEmpty())
                .findFirst()
                .orElse(""));
        return cells;
    }

    private void add(EstimateRow perArea, EstimateRow total, List<String> cells) {
        cells.add(Csv.number(perArea.in(units, perArea.mean())));
        cells.add(Csv.number(perArea.in(units, perArea.se())));
        cells.add(Csv.number(perArea.in(units, perArea.lower())));
        cells.add(Csv.number(perArea.in(units, perArea.upper())));
        cells.add(Csv.number(perArea.samplingErrorPercent()));
        cells.add(Csv.number(total.in(units, total.mean())));
        cells.add(Csv.number(total.in(units, total.se())));
    }
}
