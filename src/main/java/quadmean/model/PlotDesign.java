package quadmean.model;

import java.util.List;

/** The kind and size of the plots, which decide how many trees per hectare each tallied tree stands for. */
public sealed interface PlotDesign {
    /** Square metres in a hectare. */
    double M2_PER_HA = 10_000;

    /**
     * One circle or other shape of fixed area.
     *
     * @param areaHa plot area (ha)
     */
    record Fixed(double areaHa) implements PlotDesign {
        public Fixed {
            requirePositive(areaHa);
        }
    }

    /**
     * Plots within plots: a tree counts on the ring of the largest {@code minDbhCm} that it reaches, and on no other.
     *
     * @param rings rings in ascending order of {@code minDbhCm}
     */
    record Nested(List<Ring> rings) implements PlotDesign {
        public Nested {
            rings = List.copyOf(rings);
            for (int i = 1; i < rings.size(); i++) {
                if (!(rings.get(i).minDbhCm() > rings.get(i - 1).minDbhCm())) {
                    throw new IllegalArgumentException("rings must ascend by minimum dbh");
                }
            }
        }
    }

    /**
     * One of several nested plots.
     *
     * @param minDbhCm smallest dbh counted on it (cm)
     * @param areaHa its area (ha)
     */
    record Ring(double minDbhCm, double areaHa) {
        public Ring {
            requirePositive(areaHa);
        }
    }

    /**
     * A strip along a line.
     *
     * @param widthM full width (m)
     * @param lengthM horizontal length (m)
     */
    record Strip(double widthM, double lengthM) implements PlotDesign {
        public Strip {
            requirePositive(widthM);
            requirePositive(lengthM);
        }

        /** The same width along another length. */
        public Strip ofLength(double otherM) {
            return new Strip(widthM, otherM);
        }

        /** Its area (ha). */
        public double areaHa() {
            return widthM * lengthM / M2_PER_HA;
        }
    }

    /**
     * Every tree of each stratum: plots are parts of it, and all of them together are the whole.
     *
     * @param measuring which trees are measured
     */
    record Complete(Measuring measuring) implements PlotDesign {}

    /**
     * A point sample: trees are chosen with probability proportional to their basal area.
     *
     * @param basalAreaFactor factor of the gauge: basal area that a tree of a full sweep stands for (m²/ha)
     * @param sweep part of the circle that is swept
     * @param measuring which trees are measured
     */
    record Point(double basalAreaFactor, Sweep sweep, Measuring measuring) implements PlotDesign {
        public Point {
            requirePositive(basalAreaFactor);
        }

        /** Full sweeps, every tree measured. */
        public Point(double basalAreaFactor) {
            this(basalAreaFactor, Sweep.FULL, new Measuring.All());
        }

        /** Basal area that each chosen tree stands for (m²/ha). */
        public double perTree() {
            return sweep.multiplier() * basalAreaFactor;
        }

        /** Basal area that each measured tree stands for (m²/ha), which is more where a larger factor chose it. */
        public double perMeasuredTree() {
            return measuring instanceof Measuring.LargerFactor larger
                    ? sweep.multiplier() * larger.basalAreaFactor()
                    : perTree();
        }
    }

    /** Which of the chosen trees are measured. */
    default Measuring measuring() {
        return new Measuring.All();
    }

    private static void requirePositive(double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException("plot area and basal area factor must be above zero, got " + value);
        }
    }
}
