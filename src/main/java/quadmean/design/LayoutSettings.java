package quadmean.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How plots are laid out on the map and walked to.
 *
 * @param pattern how they lie
 * @param extent whether each stratum has its own layout
 * @param plots number of plots asked for; empty if the plan works it out
 * @param spacingM distance between plots of a line (m); empty if it follows from the number
 * @param rowSpacingM distance between the lines of a rectangular grid (m)
 * @param bearingDegrees direction of the lines, clockwise from true north (degrees)
 * @param bufferM distance that plots keep from the line of the tract (m), 0 for none
 * @param cluster how the plots of a cluster lie, if plots come in clusters
 * @param walking what the walk takes
 * @param largestDbhCm dbh of the largest tree expected (cm), for the reach of a point
 * @param subsets number of complete layouts, each over the whole ground with a random start of its own, walked one after the other
 */
public record LayoutSettings(
        Pattern pattern,
        Extent extent,
        OptionalInt plots,
        OptionalDouble spacingM,
        OptionalDouble rowSpacingM,
        double bearingDegrees,
        double bufferM,
        Optional<Cluster> cluster,
        Walking walking,
        double largestDbhCm,
        int subsets) {

    /** A single layout. */
    public LayoutSettings(
            Pattern pattern,
            Extent extent,
            OptionalInt plots,
            OptionalDouble spacingM,
            OptionalDouble rowSpacingM,
            double bearingDegrees,
            double bufferM,
            Optional<Cluster> cluster,
            Walking walking,
            double largestDbhCm) {
        this(pattern, extent, plots, spacingM, rowSpacingM, bearingDegrees, bufferM, cluster, walking, largestDbhCm, 1);
    }

    /** How plots lie. */
    public enum Pattern {
        SQUARE("square"),
        RECTANGULAR("rectangular"),
        /** Every plot as far from its six neighbours. */
        TRIANGULAR("triangular"),
        RANDOM("random"),
        /** Random, but spread over the ground. */
        BALANCED("balanced");

        private final String id;

        Pattern(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }

        /** Whether plots lie on lines at fixed distances. */
        public boolean isGrid() {
            return this == SQUARE || this == RECTANGULAR || this == TRIANGULAR;
        }
    }

    /** The ground that one layout covers. */
    public enum Extent {
        STRATUM("stratum"),
        TRACT("tract");

        private final String id;

        Extent(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }
    }

    /** How the plots of a cluster lie around its middle. */
    public enum Shape {
        LINE("line"),
        /** Evenly on a circle, neighbours at the spacing: three make a triangle, four a square. */
        RING("ring");

        private final String id;

        Shape(String id) {
            this.id = id;
        }

        /** The name used in design files. */
        public String id() {
            return id;
        }
    }

    /**
     * A cluster.
     *
     * @param plots plots of a whole cluster, 2 or more
     * @param spacingM distance between neighbours (m)
     * @param shape how they lie
     */
    public record Cluster(int plots, double spacingM, Shape shape) {}

    /**
     * Slopes of the ground (percent).
     *
     * @param mean mean slope of the whole tract, if that is what is known
     * @param byStratum mean slope of each stratum by its code, if these are
     */
    public record Slopes(OptionalDouble mean, Map<String, Double> byStratum) {
        /** Nothing is known. */
        public static final Slopes NONE = new Slopes(OptionalDouble.empty(), Map.of());

        public Slopes {
            byStratum = Map.copyOf(byStratum);
        }

        /** The slope in a stratum. */
        public OptionalDouble in(String stratum) {
            Double own = byStratum.get(stratum);
            return own == null ? mean : OptionalDouble.of(own);
        }

        /** Whether any is known. */
        public boolean isKnown() {
            return mean.isPresent() || !byStratum.isEmpty();
        }
    }

    /**
     * What the walk takes.
     *
     * @param start where each day starts and ends: longitude and latitude, or east and north in the unit of local
     *     coordinates; empty for the corner of the tract farthest south-west
     * @param declinationDegrees magnetic declination (degrees, east positive), if known
     * @param slopes slopes of the ground, as far as known
     * @param metresPerHour pace between plots (m/h)
     * @param plotHours time on a plot (h)
     * @param dayHours working day in the woods (h)
     */
    public record Walking(
            List<Double> start,
            OptionalDouble declinationDegrees,
            Slopes slopes,
            double metresPerHour,
            double plotHours,
            double dayHours) {
        public Walking {
            start = List.copyOf(start);
        }
    }
}
