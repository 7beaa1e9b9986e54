package quadmean.scale;

import java.util.List;

/**
 * What grows in an invented estate: shares of species and height curves by region, and equations of volume. Every number is made
 * up; no place, owner or study stands behind any of them.
 */
final class InventedWoods {
    /** Codes of regions; the curves of heights go by them. */
    static final List<String> REGIONS = List.of("R1", "R2", "R3", "R4", "R5");

    /** Codes of strata, which stands are grouped by in a report. */
    static final List<String> STRATA = List.of("north", "middle", "south");

    /** USDA PLANTS symbols. */
    static final List<Species> SPECIES = List.of(
            new Species("PSME", "Douglas-fir", 2.0, 0.130, -9.80, 1.78, 1.08),
            new Species("TSHE", "western hemlock", 1.8, 0.140, -9.88, 1.84, 1.05),
            new Species("THPL", "western redcedar", 2.3, 0.145, -9.60, 1.75, 1.00),
            new Species("ALRU2", "red alder", 1.4, 0.165, -9.75, 1.80, 1.02),
            new Species("ABGR", "grand fir", 1.9, 0.138, -9.85, 1.82, 1.06));

    /** Percent of trees by region (rows) and species (columns). */
    private static final int[][] SHARES = {
        {55, 20, 10, 10, 5}, {30, 35, 15, 15, 5}, {40, 10, 5, 5, 40}, {25, 30, 30, 10, 5}, {45, 15, 10, 25, 5},
    };

    private InventedWoods() {}

    /**
     * A species.
     *
     * @param code code in the tally
     * @param name name for people
     * @param b0 first coefficient of the curve in the middle region
     * @param b1 second coefficient there
     * @param a coefficient of ln V = a + b·ln D + c·ln H with V in m³, D in cm and H in m
     * @param b coefficient of the same
     * @param c coefficient of the same
     */
    record Species(String code, String name, double b0, double b1, double a, double b, double c) {
        /** The mean height in a region, h = 1.3 + d²/(b0 + b1·d)²: a form of Näslund's with coefficients made up. */
        Curve curve(int region) {
            int off = region - REGIONS.size() / 2;
            return new Curve(b0 + 0.1 * off, b1 + 0.004 * off);
        }
    }

    /**
     * A height curve.
     *
     * @param b0 above 0
     * @param b1 above 0
     */
    record Curve(double b0, double b1) {
        /** Metres. */
        static final double BREAST_HEIGHT = 1.3;

        /** Mean height in metres at a dbh in centimetres. */
        double height(double dbh) {
            double x = dbh / (b0 + b1 * dbh);
            return BREAST_HEIGHT + x * x;
        }

        /** A height that is off the mean by a part of what is above breast height. */
        double height(double dbh, double part) {
            return BREAST_HEIGHT + (height(dbh) - BREAST_HEIGHT) * (1 + part);
        }
    }

    /** Number of a species, where a percentage from 0 to 99 falls among the shares of a region. */
    static int species(int region, int percent) {
        int species = 0;
        int reached = SHARES[region][0];
        while (percent >= reached) {
            species++;
            reached += SHARES[region][species];
        }
        return species;
    }

    /** Percent of the trees of a region that are of a species. */
    static int share(int region, int species) {
        return SHARES[region][species];
    }
}
