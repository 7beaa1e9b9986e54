package quadmean.field;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.Design;
import quadmean.design.Nearest;
import quadmean.design.TallyFile;
import quadmean.model.CountedTrees;
import quadmean.model.FieldHeight;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Rule;
import quadmean.model.Tree;
import quadmean.model.TreeDetail;
import quadmean.units.Unit;

/** The tree of a row, with every problem the row has. */
final class TreeReader {
    /** No tree is thicker (from memory). */
    private static final double THICKEST_CM = 1_200;

    private final Design design;
    private final Map<String, String> recodes = new HashMap<>();
    private final HeightReader heights;
    private final DetailReader details;
    private final PlotLimits limits;
    private final double minDbhCm;

    TreeReader(Design design) {
        this.design = design;
        this.heights = new HeightReader(design);
        this.details = new DetailReader(design);
        this.limits = new PlotLimits(design);
        this.minDbhCm = design.plot() instanceof PlotDesign.Nested nested
                ? nested.rings().get(0).minDbhCm()
                : 0;
        design.species().values().forEach(s -> s.recodeFrom().forEach(from -> recodes.put(from, s.code())));
    }

    /** Another plot begins, and none of those before goes on. */
    void beginPlot() {
        details.beginPlot();
    }

    /** The tree; null if the row cannot be used, which the problems then say. */
    @Nullable
    Tree read(Row row, RowProblems problems) {
        String species = species(row, problems);
        double dbhCm = dbhCm(row, problems);
        FieldHeight height = heights.read(row, problems);
        TreeDetail detail = details.read(row, problems);
        double reach = limits.check(row, dbhCm, problems);
        if (problems.isOut()) {
            return null;
        }
        return new Tree(
                row.fileName(),
                row.line(),
                row.text(ColumnRole.PLOT),
                row.text(ColumnRole.TREE),
                species,
                dbhCm,
                height,
                detail.withReach(reach));
    }

    /** A height that was measured; null if no tree has it. */
    @Nullable
    FieldHeight measured(TallyFile file, double written, String text) {
        return heights.measured(file, written, text);
    }

    /** The trees of a row that was counted or predicted only; null if the row cannot be used, which the problems then say. */
    @Nullable
    CountedTrees counted(Row row, RowProblems problems) {
        String species = species(row, problems);
        TreeDetail detail = details.read(row, problems);
        if (design.plot().measuring() instanceof Measuring.ThreeP p && detail.prediction() >= p.limit()) {
            problems.add(
                    Rule.PREDICTION_UNUSABLE,
                    ColumnRole.PREDICTION,
                    "the tree was sure to be measured, and has no dbh");
        }
        return problems.isOut() ? null : new CountedTrees(row.fileName(), row.line(), species, detail);
    }

    private String species(Row row, RowProblems problems) {
        String written = row.text(ColumnRole.SPECIES);
        if (written.isEmpty()) {
            problems.add(Rule.SPECIES_MISSING, ColumnRole.SPECIES, "the tree has no species");
            return written;
        }
        String recoded = recodes.get(written);
        if (recoded != null) {
            problems.add(Rule.SPECIES_RECODED, ColumnRole.SPECIES, written + " is taken as " + recoded);
            return recoded;
        }
        if (written.equals("*")) {
            problems.add(Rule.SPECIES_MISSING, ColumnRole.SPECIES, "* stands for all species, not for one");
            return written;
        }
        if (!design.species().isEmpty() && !design.species().containsKey(written)) {
            String hint = Nearest.to(written, design.species().keySet())
                    .map(s -> "; did you mean " + s + "?")
                    .orElse("");
            problems.add(
                    Rule.SPECIES_UNKNOWN,
                    ColumnRole.SPECIES,
                    "species \"" + written + "\" is not in the design" + hint);
        }
        return written;
    }

    private double dbhCm(Row row, RowProblems problems) {
        boolean byGirth = row.file().columns().containsKey(ColumnRole.GIRTH);
        ColumnRole role = byGirth ? ColumnRole.GIRTH : ColumnRole.DBH;
        if (row.text(role).isEmpty()) {
            problems.add(Rule.DBH_MISSING, role, "the tree has no " + role.key());
            return Double.NaN;
        }
        OptionalDouble written = Numbers.read(row, role, problems);
        if (written.isEmpty()) {
            return Double.NaN;
        }
        ColumnSpec spec = row.file().columns().get(role);
        Unit unit = spec == null || spec.unit() == null ? Unit.CENTIMETRE : spec.unit();
        double dbhCm = unit.convert(written.getAsDouble() / (byGirth ? Math.PI : 1), Unit.CENTIMETRE);
        if (!(dbhCm > 0 && dbhCm < THICKEST_CM)) {
            String detail = row.text(role) + " " + unit.symbol() + " is no " + role.key() + " of a tree";
            problems.add(Rule.DBH_IMPOSSIBLE, role, detail);
        } else if (dbhCm < minDbhCm) {
            double smallest = Unit.CENTIMETRE.convert(minDbhCm, unit);
            problems.add(
                    Rule.DBH_BELOW_MINIMUM,
                    role,
                    String.format(Locale.ROOT, "the smallest dbh counted is %.1f %s", smallest, unit.symbol()));
        }
        return dbhCm;
    }
}
