package quadmean.model;

import java.util.List;

/** The kind and size of the plots, which decide how many trees per hectare each tallied tree stands for. */
public sealed interface PlotDesign {

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
     * A point sample: trees are chosen with probability proportional to their basal area.
     *
     * @param basalAreaFactor basal area that each tallied tree stands for (m²/ha)
     */
    record Point(double basalAreaFactor) implements PlotDesign {
        public Point {
            requirePositive(basalAreaFactor);
        }
    }

    private static void requirePositive(double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException("plot area and basal area factor must be above zero, got " + value);
        }
    }
}
