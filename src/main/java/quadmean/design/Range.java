package quadmean.design;

/**
 * Ranges of numbers in a design; NaN and infinity lie in none of them, nor do sizes that no cruise has and that
 * arithmetic would lose.
 */
enum Range {
    POSITIVE("a number above 0 of a size that makes sense") {
        @Override
        boolean holds(double v) {
            return v >= SMALLEST && v <= LARGEST;
        }
    },
    NOT_NEGATIVE("a number of 0 or more, up to 1e12") {
        @Override
        boolean holds(double v) {
            return v >= 0 && v <= LARGEST;
        }
    },
    SHARE("a number between 0 and 1, such as 0.95 for 95 %") {
        @Override
        boolean holds(double v) {
            return v > 0 && v < 1;
        }
    },
    ZERO_TO_BELOW_ONE("a number of 0 or more and below 1") {
        @Override
        boolean holds(double v) {
            return v >= 0 && v < 1;
        }
    },
    CONFIDENCE("a number between 0 and 1 (0.01 to 0.9999), such as 0.95 for 95 %") {
        @Override
        boolean holds(double v) {
            return v >= 0.01 && v <= 0.9999;
        }
    },
    /** Of one-sided bounds, which are limits at twice that less one. */
    BOUND_CONFIDENCE("a number between 0.5 and 1 (0.51 to 0.9999), such as 0.95 for 95 %") {
        @Override
        boolean holds(double v) {
            return v >= 0.51 && v <= 0.9999;
        }
    },
    INDEX_ERROR("an index error from -8 to 8, in units of the scale") {
        @Override
        boolean holds(double v) {
            return Math.abs(v) <= 8;
        }
    },
    CORRECTION_FACTOR("a factor from 0.5 to 2") {
        @Override
        boolean holds(double v) {
            return v >= 0.5 && v <= 2;
        }
    },
    FINITE("a finite number, of a size up to 1e12") {
        @Override
        boolean holds(double v) {
            return Math.abs(v) <= LARGEST;
        }
    },
    CLASS_WIDTH("a number from 0.1 to 100") {
        @Override
        boolean holds(double v) {
            return v >= 0.1 && v <= 100;
        }
    },
    FORM_CLASS("a form class in percent, from 50 to 100") {
        @Override
        boolean holds(double v) {
            return v >= 50 && v <= 100;
        }
    },
    PERCENT("a percentage above 0, up to 100") {
        @Override
        boolean holds(double v) {
            return v > 0 && v <= 100;
        }
    },
    PERCENT_OR_ZERO("a percentage from 0 to 100") {
        @Override
        boolean holds(double v) {
            return v >= 0 && v <= 100;
        }
    },
    TENTH_TO_ONE("a number from 0.1 to 1") {
        @Override
        boolean holds(double v) {
            return v >= 0.1 && v <= 1;
        }
    },
    /** Exponents of a stem's taper: from fuller than a paraboloid (0.5) to more hollow than a neiloid (1.5). */
    TAPER_EXPONENT("a number above 0, an exponent from 0.1 to 3: 1 is a cone, 0.5 a paraboloid") {
        @Override
        boolean holds(double v) {
            return v >= 0.1 && v <= 3;
        }
    },
    BEARING("a bearing from 0 to 360 degrees") {
        @Override
        boolean holds(double v) {
            return v >= 0 && v <= 360;
        }
    },
    DECLINATION("a declination from -180 to 180 degrees, east positive") {
        @Override
        boolean holds(double v) {
            return v >= -180 && v <= 180;
        }
    },
    DAY_HOURS("a number of hours above 0, up to 24") {
        @Override
        boolean holds(double v) {
            return v > 0 && v <= 24;
        }
    },
    HEIGHTS_PER_CURVE("a whole number from 10 to 100000") {
        @Override
        boolean holds(double value) {
            return value == Math.rint(value) && value >= 10 && value <= 100_000;
        }
    },
    PLOT_COUNT("a whole number from 1 to 5000") {
        @Override
        boolean holds(double v) {
            return v >= 1 && v <= 5000 && v == Math.rint(v);
        }
    },
    TWO_OR_MORE("a number of 2 or more, up to 1000") {
        @Override
        boolean holds(double v) {
            return v >= 2 && v <= 1000;
        }
    },
    TWO_OR_MORE_WHOLE("a whole number of 2 or more, up to 1e9") {
        @Override
        boolean holds(double v) {
            return v >= 2 && v <= 1e9 && v == Math.rint(v);
        }
    },
    /** Lengths in hundredths, of which sums meet exactly. */
    HUNDREDTHS("a length above 0 and under 1000, in whole hundredths such as 16.5 or 5.05") {
        @Override
        boolean holds(double v) {
            return v > 0 && HUNDREDTHS_OR_ZERO.holds(v);
        }
    },
    HUNDREDTHS_OR_ZERO("a length of 0 or more and under 1000, in whole hundredths such as 0.5 or 0.05") {
        @Override
        boolean holds(double v) {
            return v >= 0 && v < 1000 && Math.abs(v * 100 - Math.rint(v * 100)) < 1e-9;
        }
    },
    /** From beside a small tree to as far as a tip is ever seen, in metres or feet. */
    SIGHTING_DISTANCE("a distance from 1 to 500") {
        @Override
        boolean holds(double v) {
            return v >= 1 && v <= 500;
        }
    },
    WHOLE_TO_HUNDRED("a whole number from 1 to 100") {
        @Override
        boolean holds(double v) {
            return v >= 1 && v <= 100 && v == Math.rint(v);
        }
    },
    REPLICATES("a whole number from 100 to 1e6") {
        @Override
        boolean holds(double v) {
            return v >= 100 && v <= 1e6 && v == Math.rint(v);
        }
    },
    AT_LEAST_THREE("a whole number of 3 or more, up to 1e6") {
        @Override
        boolean holds(double v) {
            return v >= 3 && v <= 1e6 && v == Math.rint(v);
        }
    };

    private static final double SMALLEST = 1e-12;
    private static final double LARGEST = 1e12;

    private final String label;

    Range(String label) {
        this.label = label;
    }

    abstract boolean holds(double value);

    String label() {
        return label;
    }
}
