package quadmean.design;

/** Ranges of numbers in a design; NaN and infinity lie in none of them. */
enum Range {
    POSITIVE("a number above 0") {
        @Override
        boolean holds(double v) {
            return v > 0 && v < Double.POSITIVE_INFINITY;
        }
    },
    NOT_NEGATIVE("0 or more") {
        @Override
        boolean holds(double v) {
            return v >= 0 && v < Double.POSITIVE_INFINITY;
        }
    },
    SHARE("between 0 and 1, such as 0.95 for 95 %") {
        @Override
        boolean holds(double v) {
            return v > 0 && v < 1;
        }
    },
    FINITE("a finite number") {
        @Override
        boolean holds(double v) {
            return Math.abs(v) < Double.POSITIVE_INFINITY;
        }
    },
    AT_LEAST_THREE("3 or more") {
        @Override
        boolean holds(double v) {
            return v >= 3 && v < Double.POSITIVE_INFINITY;
        }
    };

    private final String label;

    Range(String label) {
        this.label = label;
    }

    abstract boolean holds(double value);

    String label() {
        return label;
    }
}
