package quadmean.design;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What {@code [simulate]} says of cruises on paper that nothing else in a design does.
 *
 * @param plots plots (or clusters) of one cruise, if it says so
 * @param listed plots of the first phase of double sampling, of which {@code plots} are visited
 * @param auxiliary what stands behind the auxiliary of a plot
 * @param auxiliaryErrorPercent how far the auxiliary of a plot scatters about it (percent)
 * @param prediction what stands behind the prediction of a tree in 3P sampling
 * @param predictionErrorPercent how far the prediction of a tree scatters about it (percent)
 * @param measureEvery trees are measured at every so many-th point, where the design has count points
 * @param minutes what trees take, besides what a plot takes anyway
 */
public record SimulationSettings(
        OptionalInt plots,
        OptionalInt listed,
        Auxiliary auxiliary,
        double auxiliaryErrorPercent,
        Prediction prediction,
        double predictionErrorPercent,
        OptionalInt measureEvery,
        Minutes minutes) {
    /** A design without the table. */
    public static final SimulationSettings NONE = new SimulationSettings(
            OptionalInt.empty(),
            OptionalInt.empty(),
            Auxiliary.TREES,
            0,
            Prediction.BASAL_AREA,
            0,
            OptionalInt.empty(),
            new Minutes(0, 0, 0));

    /** What the auxiliary of a plot is made of. */
    public enum Auxiliary {
        TREES("trees"),
        BASAL_AREA("basal_area");

        private final String id;

        Auxiliary(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }
    }

    /** What the prediction of a tree is made of, in the units of the design. */
    public enum Prediction {
        DBH("dbh"),
        BASAL_AREA("basal_area"),
        /** dbh² × height, in the cubed unit of length (m³ or ft³): volume but for the form of the stem. */
        DBH_SQUARED_HEIGHT("dbh_squared_height");

        private final String id;

        Prediction(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }
    }

    /**
     * Time that trees take (minutes).
     *
     * @param perTree for each measured tree
     * @param perHeight for each height
     * @param perCount for each tree that is counted, or predicted, and not measured
     */
    public record Minutes(double perTree, double perHeight, double perCount) {}

    /** The number of plots asked for here or, failing that, by a layout. */
    public OptionalInt plots(OptionalInt ofLayout) {
        return plots.isPresent() ? plots : ofLayout;
    }

    /** The scatter of the auxiliary as a share. */
    public OptionalDouble auxiliaryError() {
        return auxiliaryErrorPercent > 0 ? OptionalDouble.of(auxiliaryErrorPercent / 100) : OptionalDouble.empty();
    }
}
