package quadmean.cruise;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quadmean.design.Design;
import quadmean.height.HeightScreen;
import quadmean.height.HeightScreen.Outlier;
import quadmean.height.HeightSettings;
import quadmean.model.FieldHeight;
import quadmean.model.HeightSource;
import quadmean.model.Rule;
import quadmean.model.Tree;
import quadmean.model.TreeDetail.Top;
import quadmean.units.Unit;

/** Heights that do not go with the others: off the curve, in another unit, or of an unlikely shape. */
final class HeightFindings {
    /** Height over dbh, both in metres: outside these no tree is whole. Common practice, no source. */
    private static final double SLIMMEST = 200;

    private static final double STOUTEST = 15;

    /** A slip explains a height if undoing it brings the height this near to the curve, as a share of it. No source. */
    private static final double FITS = 0.1;

    private HeightFindings() {}

    static Map<Tree, Finding> find(Design design, HeightSettings settings, List<Tree> trees) {
        Map<Tree, Finding> found = new HashMap<>();
        trees.stream()
                .filter(t -> t.height() != null && t.detail().top() == Top.WHOLE)
                .forEach(t -> shape(t).ifPresent(f -> found.put(t, f)));
        HeightScreen.find(trees, settings)
                .forEach(o -> found.put(o.tree(), join(design, Optional.ofNullable(found.get(o.tree())), o)));
        return found;
    }

    /** What is odd about a measured height, as far as it is off its curve. */
    static Optional<Finding> of(Design design, Tree tree, Optional<Outlier> off) {
        Optional<Finding> shape = shape(tree);
        return off.isEmpty() ? shape : Optional.of(join(design, shape, off.get()));
    }

    private static Optional<Finding> shape(Tree tree) {
        double ratio = metres(tree) / (tree.dbhCm() / 100);
        if (ratio >= STOUTEST && ratio <= SLIMMEST) {
            return Optional.empty();
        }
        String detail = String.format(Locale.ROOT, "tree %s: its height is %.0f times its dbh", tree.label(), ratio);
        return Optional.of(new Finding(Rule.RATIO_UNLIKELY, Finding.Subject.HEIGHT, detail));
    }

    /** A slip of units explains more than an odd shape, which explains more than a height off the curve. */
    private static Finding join(Design design, Optional<Finding> shape, Outlier outlier) {
        Finding off = offCurve(design, outlier);
        return off.rule() == Rule.UNIT_SLIP ? off : shape.orElse(off);
    }

    private static Finding offCurve(Design design, Outlier outlier) {
        Tree tree = outlier.tree();
        double metres = metres(tree);
        // readings have no unit to slip; a wrong reading is a wrong reading
        Optional<String> slip = Objects.requireNonNull(tree.height()).source() == HeightSource.MEASURED
                ? UnitSlip.explain(
                        metres, outlier.expectedM(), FITS * outlier.expectedM(), UnitSlip.TENFOLD, UnitSlip.FEET)
                : Optional.empty();
        Unit unit = design.units().length();
        String detail = String.format(
                Locale.ROOT,
                "tree %s: height %.1f %s at dbh %.1f %s; the curve gives %.1f %s, %.1f robust standard deviations away%s",
                tree.label(),
                Unit.METRE.convert(metres, unit),
                unit.symbol(),
                Unit.CENTIMETRE.convert(tree.dbhCm(), design.units().diameter()),
                design.units().diameter().symbol(),
                Unit.METRE.convert(outlier.expectedM(), unit),
                unit.symbol(),
                outlier.deviations(),
                slip.map(s -> "; it would fit if " + s + " were confused").orElse(""));
        Rule rule = slip.isPresent() ? Rule.UNIT_SLIP : Rule.HEIGHT_OFF_CURVE;
        return new Finding(rule, Finding.Subject.HEIGHT, detail);
    }

    private static double metres(Tree tree) {
        FieldHeight height = Objects.requireNonNull(tree.height());
        return height.metres();
    }
}
