package quadmean.simulate;

import java.util.Locale;
import quadmean.simulate.Trials.Stand;

/** The ways of sampling that cruises on paper know, as designs for each forest. */
enum Methods {
    SIMPLE_RANDOM("simple random points", Kind.LINEAR) {
        @Override
        String tables(Stand s, int n) {
            return point(s) + boundary() + random(n);
        }
    },
    FIXED_PLOTS("simple random plots", Kind.LINEAR) {
        @Override
        String tables(Stand s, int n) {
            return fixed(s) + boundary() + random(n);
        }
    },
    STRATIFIED("stratified points", Kind.LINEAR) {
        @Override
        String tables(Stand s, int n) {
            return point(s) + boundary() + "[selection]\nmethod = \"stratified\"\n[simulate]\nplots = " + n + "\n";
        }

        @Override
        boolean hasStrata() {
            return true;
        }
    },
    EVEN_GRID("grid that divides the tract evenly", Kind.LINEAR) {
        @Override
        String tables(Stand s, int n) {
            int lines = (int) Math.max(2, Math.round(Math.sqrt(n)));
            return point(s) + boundary() + "[selection]\nmethod = \"systematic\"\n"
                    + String.format(
                            Locale.ROOT,
                            "[layout]\npattern = \"rectangular\"\nover = \"tract\"\nspacing = %.9f\nrow_spacing = %.9f\n[simulate]\n",
                            s.northM() / lines,
                            s.eastM() / lines);
        }
    },
    SYSTEMATIC("square grid of points", Kind.RATIO) {
        @Override
        String tables(Stand s, int n) {
            return point(s) + boundary() + "[selection]\nmethod = \"systematic\"\n[simulate]\nplots = " + n + "\n";
        }
    },
    NEIGHBOURS("the same, variance by neighbours", Kind.RATIO) {
        @Override
        String tables(Stand s, int n) {
            return SYSTEMATIC.tables(s, n) + "[estimate]\nvariance = \"neighbour_differences\"\n";
        }
    },
    CLUSTER("clusters of three points", Kind.RATIO) {
        @Override
        String tables(Stand s, int n) {
            return point(s) + boundary() + "[estimate]\nestimator = \"cluster\"\n"
                    + "[layout]\npattern = \"random\"\nover = \"tract\"\ncluster = 3\ncluster_spacing = "
                    + String.format(Locale.ROOT, "%.1f", Math.sqrt(s.areaHa * 10_000) / 10)
                    + "\n[simulate]\nplots = " + n + "\n";
        }
    },
    DOUBLE_REGRESSION("double sampling, regression", Kind.RATIO) {
        @Override
        String tables(Stand s, int n) {
            return phases(s, n, "double_regression");
        }
    },
    DOUBLE_RATIO("double sampling, ratio", Kind.RATIO) {
        @Override
        String tables(Stand s, int n) {
            return phases(s, n, "double_ratio");
        }
    },
    RATIO("ratio to a known mean", Kind.RATIO) {
        @Override
        String tables(Stand s, int n) {
            return fixed(s) + boundary() + "[estimate]\nestimator = \"ratio\"\nauxiliary_mean = 1\n"
                    + "[simulate]\nauxiliary = \"basal_area\"\nauxiliary_error = 20\nplots = " + n + "\n";
        }
    },
    COUNT_POINTS("counts, every third point measured", Kind.LINEAR) {
        @Override
        String tables(Stand s, int n) {
            return point(s) + "measured = \"some_points\"\n" + boundary()
                    + "[estimate]\nproduct_variance = \"double_sampling\"\n[simulate]\nmeasure_every = 3\nplots = " + n
                    + "\n";
        }
    },
    TWO_FACTORS("points with a second factor", Kind.LINEAR) {
        @Override
        String tables(Stand s, int n) {
            return point(s) + "measure_factor = " + 3 * s.factor + "\n" + boundary()
                    + "[estimate]\nproduct_variance = \"double_sampling\"\n" + random(n);
        }
    },
    THREE_P("3P, unadjusted", Kind.LINEAR) {
        @Override
        String tables(Stand s, int n) {
            return threeP(n, "unadjusted");
        }
    },
    THREE_P_ADJUSTED("3P, adjusted", Kind.RATIO) {
        @Override
        String tables(Stand s, int n) {
            return threeP(n, "adjusted");
        }
    };

    private final String label;
    private final Kind kind;

    Methods(String label, Kind kind) {
        this.label = label;
        this.kind = kind;
    }

    /** Whether the estimate of basal area is a sum over plots, which has no bias. */
    enum Kind {
        LINEAR,
        /** A ratio or a line, with a bias of order 1/n; so is the mean over a grid of which the start decides how many plots there are. */
        RATIO
    }

    String label() {
        return label;
    }

    boolean isLinear() {
        return kind == Kind.LINEAR;
    }

    boolean hasStrata() {
        return false;
    }

    /** The tables of a design by this method, with so many plots (visited, measured or expected to be). */
    abstract String tables(Stand s, int n);

    String design(Stand s, int n) {
        return Trials.text(s, hasStrata(), tables(s, n));
    }

    private static String point(Stand s) {
        return "[plot]\nkind = \"point\"\nbasal_area_factor = " + s.factor + "\n";
    }

    private static String fixed(Stand s) {
        return "[plot]\nkind = \"fixed\"\narea = " + s.plotHa + "\n";
    }

    private static String boundary() {
        return "boundary = \"mirage\"\n";
    }

    private static String random(int n) {
        return "[simulate]\nplots = " + n + "\n";
    }

    private static String phases(Stand s, int n, String estimator) {
        return fixed(s) + boundary() + "[estimate]\nestimator = \"" + estimator + "\"\n"
                + "[simulate]\nauxiliary = \"basal_area\"\nauxiliary_error = 20\nlisted = " + 4 * n + "\nplots = " + n
                + "\n";
    }

    /** Predictions are the basal area, off by a fifth; the limit is set so that some 3 n trees of the longleaf stand are drawn. */
    private static String threeP(int n, String estimator) {
        return "[plot]\nkind = \"complete\"\n[threep]\nlimit = " + String.format(Locale.ROOT, "%.3f", 16.0 / n)
                + "\nestimator = \"" + estimator + "\"\n[simulate]\nprediction_error = 20\n";
    }
}
