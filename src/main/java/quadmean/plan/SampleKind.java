package quadmean.plan;

import java.util.Arrays;

/** Kinds of sample that a plan compares. */
public enum SampleKind {
    SIMPLE("simple"),
    STRATIFIED("stratified"),
    CLUSTER("cluster") {
        @Override
        public int plots(int[] parts) {
            return parts[1];
        }
    },
    TWO_STAGE("two_stage") {
        @Override
        public int plots(int[] parts) {
            return parts[1];
        }
    },
    DOUBLE("double") {
        @Override
        public int plots(int[] parts) {
            return parts[0];
        }
    },
    COUNT("count") {
        @Override
        public int plots(int[] parts) {
            return parts[0];
        }
    },
    THREE_P_PLOTS("threep_on_plots") {
        @Override
        public int plots(int[] parts) {
            return parts[0];
        }
    },
    /** Every tree is visited: there are no plots, and its size is that of the measured trees. */
    THREE_P("threep");

    private final String id;

    SampleKind(String id) {
        this.id = id;
    }

    /** The name used in files. */
    public String id() {
        return id;
    }

    /** Plots to go to, of a sample with so many units in its parts. */
    public int plots(int[] parts) {
        return Arrays.stream(parts).sum();
    }

    /** Whether its size is a number of plots, all alike. */
    public boolean isPlots() {
        return this == SIMPLE || this == STRATIFIED || this == CLUSTER || this == TWO_STAGE;
    }
}
