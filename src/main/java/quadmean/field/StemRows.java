package quadmean.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.field.FelledOptions.Measure;
import quadmean.model.FelledStem;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.model.StemReading;

/** Gathers rows into stems, a row a point, and keeps account of them. */
final class StemRows {
    private final FelledCells cells;
    private final Map<String, GatheredStem> stems = new LinkedHashMap<>();
    private long in;

    StemRows(FelledCells cells) {
        this.cells = cells;
    }

    /** Every problem of the row is noted; one without any is a point of its stem, else the whole stem is spoilt. */
    void take(Row row) {
        in++;
        int before = cells.problems().size();
        if (!cells.isWhole(row)) {
            return;
        }
        double dbh = cells.number(row, Measure.DBH);
        double height = cells.number(row, Measure.HEIGHT);
        StemReading point = new StemReading(
                row.line(),
                cells.number(row, Measure.AT),
                cells.number(row, Measure.DIAMETER),
                cells.has(Measure.BARK) ? cells.number(row, Measure.BARK) : Double.NaN);
        String species = cells.species(row);
        String id = row.text(Measure.TREE.role());
        if (id.isEmpty()) {
            cells.add(row, Rule.FELLED_POINT, Measure.TREE, "the row does not say of which tree it is");
            return;
        }
        GatheredStem stem = stems.computeIfAbsent(species + "\n" + id, k -> new GatheredStem(id, species));
        agree(row, Measure.DBH, stem.dbh(dbh, row));
        agree(row, Measure.HEIGHT, stem.height(height, row));
        order(row, stem, point);
        stem.take(row, point, cells.problems().size() > before);
    }

    private void agree(Row row, Measure measure, GatheredStem.First first) {
        if (first.isOther()) {
            String detail = "the tree has " + first.text() + " in row " + first.row();
            cells.add(row, Rule.FELLED_DIFFERS, measure, detail);
        }
    }

    private void order(Row row, GatheredStem stem, StemReading point) {
        if (point.heightM() <= stem.highestM()) {
            String detail = "the point lies no higher than that of row " + stem.highestRow();
            cells.add(row, Rule.FELLED_POINT, Measure.AT, detail);
        }
        if (point.heightM() >= stem.heightM()) {
            cells.add(row, Rule.FELLED_POINT, Measure.AT, "the point is not below the total height of the tree");
        }
        if (point.diameterCm() > 0 && 2 * point.barkCm() >= point.diameterCm()) {
            cells.add(row, Rule.FELLED_VALUE, Measure.BARK, "bark on both sides leaves nothing of the diameter");
        }
    }

    /** The stems that can be summed; what becomes of the rows of the others is noted. */
    List<FelledStem> stems() {
        stems.values().forEach(this::finish);
        return stems.values().stream()
                .filter(GatheredStem::isGood)
                .map(GatheredStem::stem)
                .toList();
    }

    private void finish(GatheredStem stem) {
        List<Problem> problems = cells.problems();
        if (stem.isGood()) {
            problems.addAll(stem.bulges());
        } else if (!stem.isSpoilt()) {
            cells.add(stem.firstRow(), Rule.FELLED_STEM, Measure.TREE, "the stem has one point");
        } else if (cells.badRows() == Policy.DROP) {
            String file = stem.firstRow().fileName();
            problems.addAll(stem.stem().leftOut(file, cells.column(Measure.TREE), stem.spoiltBy()));
        }
    }

    RowCount count() {
        List<GatheredStem> good =
                stems.values().stream().filter(GatheredStem::isGood).toList();
        long used = good.stream().mapToLong(s -> s.stem().readings().size()).sum();
        long kept = good.stream().mapToLong(s -> s.bulges().size()).sum();
        return new RowCount(in, used, in - used, kept);
    }
}
