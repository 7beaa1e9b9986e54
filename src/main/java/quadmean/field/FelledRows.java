package quadmean.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import quadmean.field.FelledOptions.Measure;
import quadmean.model.FelledTree;
import quadmean.model.Policy;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.model.StemFullness;

/** Turns rows into felled trees, a row a tree, and keeps account of them. */
final class FelledRows {
    private final FelledCells cells;
    private final List<FelledTree> trees = new ArrayList<>();
    private final Map<String, Long> lines = new HashMap<>();
    private long in;
    private long read;
    private long unlikely;
    private long kept;

    FelledRows(FelledCells cells) {
        this.cells = cells;
    }

    List<FelledTree> trees() {
        return trees;
    }

    RowCount count() {
        return new RowCount(in, trees.size(), in - trees.size(), kept);
    }

    /** Every problem of the row is noted; one without any is a tree. */
    void take(Row row) {
        in++;
        int before = cells.problems().size();
        if (!cells.isWhole(row)) {
            return;
        }
        double dbh = cells.number(row, Measure.DBH);
        double height = cells.number(row, Measure.HEIGHT);
        double volume = cells.number(row, Measure.VOLUME);
        String id = id(row);
        String species = cells.species(row);
        if (cells.problems().size() == before) {
            accept(row, new FelledTree(id, row.line(), species, dbh, height, volume));
        }
    }

    private String id(Row row) {
        String id = row.text(Measure.TREE.role());
        if (id.isEmpty()) {
            return "row " + row.line();
        }
        Long earlier = lines.putIfAbsent(row.text(Measure.SPECIES.role()) + "\n" + id, row.line());
        if (earlier != null) {
            cells.add(row, Rule.FELLED_REPEATED, Measure.TREE, "tree " + id + " stands in row " + earlier + " already");
        }
        return id;
    }

    private void accept(Row row, FelledTree tree) {
        StemFullness fullness = StemFullness.of(tree.dbhCm(), tree.heightM(), tree.volumeM3());
        if (fullness.isUnlikely()) {
            Policy policy = fullness.isNoStem() ? cells.badRows() : Policy.KEEP;
            cells.add(row, Rule.FELLED_UNLIKELY, Measure.VOLUME, policy, fullness.words());
            unlikely++;
        }
        if (!fullness.isNoStem()) {
            trees.add(tree);
            kept += fullness.isUnlikely() ? 1 : 0;
        }
        read++;
    }

    /** Where most trees are unlikely, a unit is wrong and no equation would be right. */
    void judge(FileProblems log) {
        if (StemFullness.isWrongUnit(unlikely, read)) {
            cells.problems().removeIf(p -> p.rule() == Rule.FELLED_UNLIKELY);
            log.add(Rule.FELLED_UNLIKELY, 0, "", "", StemFullness.wrongUnit(unlikely, read));
            kept = 0;
        }
    }
}
