package quadmean.model;

import java.util.OptionalDouble;
import java.util.Set;

/** Which of the trees that a plot chooses are measured; the others are counted, or get a prediction. */
public sealed interface Measuring {

    /** Every tree. */
    record All() implements Measuring {}

    /**
     * The trees of some points; those of the others are counted.
     *
     * @param points numbers of the measured points; where none is listed, those with a measured tree
     */
    record SomePoints(Set<String> points) implements Measuring {
        public SomePoints {
            points = Set.copyOf(points);
        }
    }

    /**
     * At each point those that a second, larger factor chooses.
     *
     * @param basalAreaFactor the larger factor (m²/ha)
     */
    record LargerFactor(double basalAreaFactor) implements Measuring {
        public LargerFactor {
            if (!(basalAreaFactor > 0)) {
                throw new IllegalArgumentException("a basal area factor lies above zero, got " + basalAreaFactor);
            }
        }
    }

    /**
     * Those whose prediction beats a random number up to the limit (3P sampling).
     *
     * @param limit largest random number of the draw, in the unit of the predictions
     * @param sumOfPredictions what all predictions should add up to, if the design says so
     * @param estimator which estimate goes into the tables
     */
    record ThreeP(double limit, OptionalDouble sumOfPredictions, Estimator estimator) implements Measuring {
        public ThreeP {
            if (!(limit > 0)) {
                throw new IllegalArgumentException("the limit of the predictions lies above zero, got " + limit);
            }
        }
    }

    /** The two estimates of 3P sampling. */
    enum Estimator {
        /** Sum of all predictions times the mean ratio of value to prediction: a small bias and a small variance. */
        ADJUSTED("adjusted"),
        /** Sum of value over probability: without bias, with the large variance of a number of trees left to chance. */
        UNADJUSTED("unadjusted");

        private final String id;

        Estimator(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }
    }

    /** Whether trees may stand in the tally without a dbh. */
    default boolean hasCounts() {
        return !(this instanceof All);
    }
}
