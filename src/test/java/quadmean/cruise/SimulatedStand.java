package quadmean.cruise;

import java.util.Locale;
import java.util.Random;

/**
 * A stand of known truth, of plots of 0.05 ha, each with its own stocking, tree size and site; a tree has the volume 4e-5·d²·h times
 * a lognormal factor of mean one. Trees and places are invented.
 *
 * @param plots plots in the stand
 * @param sampled plots that are run, the first ones: all are alike beforehand
 * @param heightEvery on each plot, every so many trees get their height measured
 * @param spread how much plots differ in size of trees, as a standard deviation (cm)
 * @param siteM how much plots differ in height, as a standard deviation (m)
 * @param scatterM scatter of heights about the curve (m)
 * @param volumeSd scatter of ln(volume) about the equation
 * @param dbhSdCm reading error of each dbh (cm)
 * @param biasPercent standard deviation of the error of all heights alike, of all dbh alike and of the equation (percent)
 */
record SimulatedStand(
        int plots,
        int sampled,
        int heightEvery,
        double spread,
        double siteM,
        double scatterM,
        double volumeSd,
        double dbhSdCm,
        double biasPercent) {
    static final double PLOT_HA = 0.05;
    private static final int TREES = 10;

    /**
     * One draw of the stand and of its cruise.
     *
     * @param tally what the crew writes down
     * @param truth volume of the stand (m³/ha)
     * @param coefficient of the volume equation that the cruise believes in
     * @param measured volume of the sampled plots (m³/ha) if all their heights stood on the true curve and all readings were exact
     */
    record Draw(String tally, double truth, double coefficient, double measured) {}

    double areaHa() {
        return plots * PLOT_HA;
    }

    static double height(double dbhCm) {
        return 1.3 + Math.pow(dbhCm / (1.6 + 0.17 * dbhCm), 2);
    }

    Draw draw(long seed) {
        Random random = new Random(seed);
        double heightBias = 1 + biasPercent / 100 * random.nextGaussian();
        double dbhBias = 1 + biasPercent / 100 * random.nextGaussian();
        double equation = 1 + biasPercent / 100 * random.nextGaussian();
        StringBuilder tally = new StringBuilder("plot,tree,species,dbh,height\n");
        double truth = 0;
        double measured = 0;
        for (int p = 0; p < plots; p++) {
            double size = 30 + spread * random.nextGaussian();
            double site = siteM * random.nextGaussian();
            for (int t = 0; t < TREES; t++) {
                double d = Math.max(12, size + 6 * random.nextGaussian());
                double h = height(d) + site + scatterM * random.nextGaussian();
                double factor = Math.exp(volumeSd * random.nextGaussian() - volumeSd * volumeSd / 2);
                truth += volume(d, h) * factor;
                double reading = (d + dbhSdCm * random.nextGaussian()) * dbhBias;
                if (p < sampled) {
                    boolean isMeasured = t % heightEvery == 0;
                    measured += volume(d, isMeasured ? h : height(d));
                    tally.append(String.format(
                            Locale.ROOT,
                            "%d,%d,PSME,%.6f,%s%n",
                            p + 1,
                            t + 1,
                            reading,
                            isMeasured ? String.format(Locale.ROOT, "%.6f", h * heightBias) : ""));
                }
            }
        }
        return new Draw(tally.toString(), truth / areaHa(), 4e-5 * equation, measured / (sampled * PLOT_HA));
    }

    private static double volume(double dbhCm, double heightM) {
        return 4e-5 * dbhCm * dbhCm * heightM;
    }

    /** The design of such a cruise. */
    String design(double coefficient) {
        return String.format(
                Locale.ROOT,
                """
                schema = 1
                [cruise]
                name = "Simulated"
                units = "metric"
                area = %s
                [plot]
                kind = "fixed"
                area = %s
                [selection]
                method = "simple_random"
                finite_population = "correct"
                [[tally]]
                file = "tally.csv"
                [tally.columns]
                plot = "plot"
                tree = "tree"
                species = "species"
                dbh = { name = "dbh", unit = "cm" }
                height = { name = "height", unit = "m" }
                [species.PSME]
                curve = "naslund"
                [height]
                calibrate = "never"
                off_curve = 1000
                [policy]
                unit-slip = "keep"
                height-off-curve = "keep"
                [volume."*"]
                form = "schumacher_hall"
                a = %s
                b = 2
                c = 1
                log_base = "e"
                residual_sd = %s
                dbh_unit = "cm"
                height_unit = "m"
                volume_unit = "m3"
                source = "made up"
                standing = "invented"
                [errors]
                dbh_sd = %s
                height_bias_sd = %s
                dbh_bias_sd = %s
                equation_sd = %s
                """,
                areaHa(),
                PLOT_HA,
                Math.log(coefficient) - volumeSd * volumeSd / 2,
                volumeSd,
                dbhSdCm,
                biasPercent,
                biasPercent,
                biasPercent);
    }
}
