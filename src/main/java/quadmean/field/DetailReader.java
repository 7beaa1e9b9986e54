package quadmean.field;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.model.Measuring;
import quadmean.model.Rule;
import quadmean.model.TreeDetail;
import quadmean.model.TreeDetail.Top;
import quadmean.model.TreeStatus;

/** What a row says of a tree besides species, dbh and height. */
final class DetailReader {
    private static final Set<String> YES = Set.of("y", "yes", "1", "x", "b", "broken", "true");
    private static final Set<String> NO = Set.of("", "n", "no", "0", "false", "whole");

    private final Design design;
    private final EdgeReader edges;
    private final Corrections corrections;

    DetailReader(Design design) {
        this.design = design;
        this.corrections = new Corrections(design);
        this.edges = new EdgeReader(design.plotRules().boundary());
    }

    /** Another plot begins, and none of those before goes on. */
    void beginPlot() {
        edges.forget();
    }

    TreeDetail read(Row row, RowProblems problems) {
        return new TreeDetail(
                StemCount.trees(row, problems),
                status(row, problems),
                top(row, problems),
                StemCount.logs(row, problems),
                merchantable(row, problems),
                row.text(ColumnRole.GRADE),
                defect(row, problems),
                edges.times(row, problems),
                prediction(row, problems),
                PlotLimits.distanceM(row, problems.silent()), // PlotLimits.check tells what is wrong with it
                Double.NaN);
    }

    /** What was foretold of the tree; 0 where 3P sampling is not in use. */
    private double prediction(Row row, RowProblems problems) {
        if (!(design.plot().measuring() instanceof Measuring.ThreeP)) {
            return 0;
        }
        double prediction = Numbers.read(row, ColumnRole.PREDICTION, problems).orElse(Double.NaN);
        if (!(prediction > 0)) {
            String what =
                    row.text(ColumnRole.PREDICTION).isEmpty() ? "no prediction" : "a prediction that is not above 0";
            problems.add(Rule.PREDICTION_UNUSABLE, ColumnRole.PREDICTION, "the tree has " + what);
            return 0;
        }
        return prediction;
    }

    private static double defect(Row row, RowProblems problems) {
        double percent = Numbers.read(row, ColumnRole.DEFECT, problems).orElse(0);
        if (percent < 0 || percent > 100) {
            problems.add(
                    Rule.DEFECT_IMPOSSIBLE,
                    ColumnRole.DEFECT,
                    row.text(ColumnRole.DEFECT) + " % of defect would leave "
                            + (percent < 0 ? "more wood than there is" : "a negative net volume"));
            return 0;
        }
        return percent / 100;
    }

    private TreeStatus status(Row row, RowProblems problems) {
        String written = row.text(ColumnRole.STATUS);
        Optional<TreeStatus> status = design.counting().status(written);
        if (status.isEmpty()) {
            problems.add(Rule.STATUS_UNKNOWN, ColumnRole.STATUS, "status \"" + written + "\" is not known");
        }
        return status.orElse(TreeStatus.LIVE);
    }

    private OptionalDouble merchantable(Row row, RowProblems problems) {
        OptionalDouble written = Numbers.read(row, ColumnRole.MERCHANTABLE_HEIGHT, problems);
        return written.isPresent()
                ? OptionalDouble.of(SightingReader.metres(row, ColumnRole.MERCHANTABLE_HEIGHT, written.getAsDouble()))
                : MerchantableReader.read(row, corrections, problems);
    }

    private static Top top(Row row, RowProblems problems) {
        String written = row.text(ColumnRole.BROKEN).toLowerCase(Locale.ROOT);
        if (!YES.contains(written) && !NO.contains(written)) {
            problems.add(
                    Rule.MARK_UNREADABLE,
                    ColumnRole.BROKEN,
                    "\"" + written + "\" is neither yes nor no for a broken top");
        }
        return YES.contains(written) ? Top.BROKEN : Top.WHOLE;
    }
}
