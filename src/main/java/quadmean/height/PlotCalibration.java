package quadmean.height;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quadmean.model.Tree;
import quadmean.stats.RandomIntercept;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * A curve moved to the level of each plot: a mixed model of the linear form with a random intercept for each plot,
 * whose effect is predicted from the plot's own measured trees. It is judged by holding out each measured tree and
 * predicting it from the other trees of its plot; the curve without calibration by its leave-one-out error.
 *
 * @param line the linear form
 * @param model its mixed model, in the unit system of the curve
 * @param outcome whether it is used
 * @param errorWith root mean square error of the held-out heights, calibrated; in the length unit of the curve
 * @param errorWithout the same of the curve alone
 * @param plots measured trees of each plot, in the order of the model's effects
 * @param units unit system of the model
 * @param breastHeight breast height in its length unit
 */
public record PlotCalibration(
        LinearisedCurve line,
        RandomIntercept model,
        Outcome outcome,
        double errorWith,
        double errorWithout,
        Map<String, MeasuredPlot> plots,
        UnitSystem units,
        double breastHeight) {

    /** With fewer measured trees that share a plot the trial says nothing: common practice, no source. */
    private static final int LEAST_PAIRED = 10;

    /**
     * Calibration must be better by more than so many standard errors: with one, a stand whose plots do not differ would be
     * calibrated too often. Common practice, no source.
     */
    private static final double CLEARLY = 2;

    /** What came of the trial. */
    public enum Outcome {
        USED("it helps: used"),
        /** Too few measured trees share a plot with another. */
        TOO_FEW("fewer than " + LEAST_PAIRED + " measured trees share a plot with another: not used"),
        NO_GAIN("no gain beyond two standard errors: not used"),
        NO_DIFFERENCE("plots differ no more than chance: not used");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        /** The outcome in words. */
        public String words() {
            return words;
        }
    }

    /**
     * The measured trees of a plot.
     *
     * @param index place of its effect in the model
     * @param trees their number
     * @param sum sum of their rows of predictors
     */
    @SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
    public record MeasuredPlot(int index, int trees, double[] sum) {}

    /**
     * Tries the linear forms and keeps the one with the smallest error.
     *
     * @param curve the curve without calibration
     * @param measured the trees that it was fitted to, in that order
     * @return null where no plot has two measured trees, for then nothing can be held out
     */
    static @Nullable PlotCalibration judge(HeightCurve curve, List<Tree> measured) {
        long plots = measured.stream().map(Tree::plot).distinct().count();
        if (plots < 2 || plots == measured.size()) {
            return null;
        }
        return Arrays.stream(LinearisedCurve.values())
                .map(line -> of(line, curve, measured))
                .min(Comparator.comparingDouble(PlotCalibration::errorWith))
                .orElseThrow();
    }

    private static PlotCalibration of(LinearisedCurve line, HeightCurve curve, List<Tree> measured) {
        int n = measured.size();
        double[] d = new double[n];
        double[] y = new double[n];
        double[] z = new double[n];
        double[][] x = new double[n][];
        int[] group = new int[n];
        Map<String, MeasuredPlot> plots = new LinkedHashMap<>();
        for (int i = 0; i < n; i++) {
            Tree t = measured.get(i);
            d[i] = Unit.CENTIMETRE.convert(t.dbhCm(), curve.units().diameter());
            double h = CurveChoice.height(t).metres();
            y[i] = Unit.METRE.convert(h, curve.units().length()) - curve.breastHeight();
            z[i] = line.transform(d[i], y[i]);
            x[i] = line.row(d[i]);
            MeasuredPlot before = plots.get(t.plot());
            group[i] = before == null ? plots.size() : before.index();
            plots.merge(t.plot(), new MeasuredPlot(group[i], 1, x[i]), PlotCalibration::together);
        }
        RandomIntercept model = RandomIntercept.fit(x, z, group);
        double[] errors = new double[n];
        for (int i = 0; i < n; i++) {
            double expected = z[i] - model.deleted()[i];
            errors[i] = y[i] - line.back(d[i], expected, model.deletedVariance()[i]);
        }
        double[] without = Objects.requireNonNull(curve.tried().fit()).deleted();
        Outcome outcome = outcome(model, plots, CurveRule.isWorse(without, errors, CLEARLY));
        return new PlotCalibration(
                line, model, outcome, rms(errors), rms(without), plots, curve.units(), curve.breastHeight());
    }

    private static Outcome outcome(RandomIntercept model, Map<String, MeasuredPlot> plots, boolean isBetter) {
        int paired = plots.values().stream()
                .mapToInt(MeasuredPlot::trees)
                .filter(n -> n > 1)
                .sum();
        if (paired < LEAST_PAIRED) {
            return Outcome.TOO_FEW;
        }
        if (model.groupVariance() == 0) {
            return Outcome.NO_DIFFERENCE;
        }
        return isBetter ? Outcome.USED : Outcome.NO_GAIN;
    }

    private static MeasuredPlot together(MeasuredPlot a, MeasuredPlot b) {
        return new MeasuredPlot(
                a.index(), a.trees() + b.trees(), new double[] {a.sum()[0] + b.sum()[0], a.sum()[1] + b.sum()[1]});
    }

    private static double rms(double[] errors) {
        return Math.sqrt(Arrays.stream(errors).map(e -> e * e).sum() / errors.length);
    }

    /** Whether calibrated heights are used. */
    public boolean isUsed() {
        return outcome == Outcome.USED;
    }

    /** Whether a plot has measured trees to calibrate from. */
    public boolean covers(String plot) {
        return plots.containsKey(plot);
    }

    /** Predicted effect of a plot on the scale of the linear form. */
    public double effect(String plot) {
        return model.effects()[plot(plot).index()];
    }

    private MeasuredPlot plot(String plot) {
        return Objects.requireNonNull(plots.get(plot), () -> "no measured trees on plot " + plot);
    }

    /**
     * Height of a tree on a plot with measured trees, corrected for bias, with its error. What is left of the variance of
     * the plot's effect counts with the curve, for the trees of a plot share it.
     *
     * @param plot the plot
     * @param dbhCm dbh (cm), above 0
     */
    public HeightPrediction predict(String plot, double dbhCm) {
        MeasuredPlot on = plot(plot);
        double d = Unit.CENTIMETRE.convert(dbhCm, units.diameter());
        double[] row = line.row(d);
        double z = model.effects()[on.index()];
        for (int k = 0; k < row.length; k++) {
            z += row[k] * model.fixed()[k];
        }
        double left = model.effectVariance(on.trees());
        double above = line.back(d, z, model.residualVariance() + left);
        double slope = line.slope(d, z);
        double curve = slope * Math.sqrt(fixedVariance(row, on) + left);
        double scatter = slope * Math.sqrt(model.residualVariance());
        return new HeightPrediction(
                units.length().convert(breastHeight + above, Unit.METRE),
                units.length().convert(curve, Unit.METRE),
                units.length().convert(scatter, Unit.METRE));
    }

    /** Variance that the estimated fixed part leaves, its part in the predicted effect taken out. */
    private double fixedVariance(double[] row, MeasuredPlot on) {
        double shrink = model.effectVariance(on.trees()) / model.residualVariance();
        double sum = 0;
        for (int a = 0; a < row.length; a++) {
            for (int b = 0; b < row.length; b++) {
                sum += (row[a] - shrink * on.sum()[a]) * model.covariance()[a][b] * (row[b] - shrink * on.sum()[b]);
            }
        }
        return sum;
    }

    /**
     * How the height of a tree moves with what other trees share: the fixed part, and what is not known of the effect of its plot.
     *
     * @param plot the plot
     * @param dbhCm dbh (cm), above 0
     * @param user code of the species
     */
    List<SharedError> sharedErrors(String plot, double dbhCm, String user) {
        MeasuredPlot on = plot(plot);
        double[] row = line.row(Unit.CENTIMETRE.convert(dbhCm, units.diameter()));
        double left = model.effectVariance(on.trees());
        double shrink = left / model.residualVariance();
        double slope = units.length().convert(slope(row, on, dbhCm), Unit.METRE);
        double[] g = new double[row.length];
        for (int k = 0; k < g.length; k++) {
            g[k] = slope * (row[k] - shrink * on.sum()[k]);
        }
        return List.of(
                new SharedError("calibrated " + user, g, model.covariance()),
                new SharedError("plot " + plot + " of " + user, new double[] {slope}, new double[][] {{left}}));
    }

    private double slope(double[] row, MeasuredPlot on, double dbhCm) {
        double z = model.effects()[on.index()];
        for (int k = 0; k < row.length; k++) {
            z += row[k] * model.fixed()[k];
        }
        return line.slope(Unit.CENTIMETRE.convert(dbhCm, units.diameter()), z);
    }

    /** What was tried and what came of it. */
    public String words() {
        String unit = units.length().symbol();
        return String.format(
                Locale.ROOT,
                "calibration by plot (linear form of %s, plot effect by restricted maximum likelihood, %s): held-out heights"
                        + " off by %.2f %s, without it by %.2f %s; %s",
                line.form().label(),
                line.correction(),
                errorWith,
                unit,
                errorWithout,
                unit,
                outcome.words());
    }
}
