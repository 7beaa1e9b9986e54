package quadmean.height;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import quadmean.model.CurveForm;
import quadmean.stats.LeastSquaresProblem;
import quadmean.stats.StraightLine;

/**
 * The mathematics of the curve forms: height above breast height as a function of dbh, in one unit system throughout.
 * Parameters are in the order a, b, c of {@link CurveForm#formula()}.
 */
enum CurveModel implements LeastSquaresProblem.Curve {
    /** d²/(a + b·d)²; asymptote 1/b². */
    NASLUND(2) {
        @Override
        public double value(double d, double[] p) {
            double root = d / (p[0] + p[1] * d);
            return root * root;
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double slope = -2 * value(d, p) / (p[0] + p[1] * d);
            return new double[] {slope, slope * d};
        }

        @Override
        List<double[]> starts(double[] d, double[] y) {
            // d/√y = a + b·d
            return List.of(line(d, i -> d[i], i -> d[i] / Math.sqrt(y[i])));
        }
    },

    /** exp(a + b/(d + 1)); asymptote exp(a). */
    WYKOFF(2) {
        @Override
        public double value(double d, double[] p) {
            return Math.exp(p[0] + p[1] / (d + 1));
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double h = value(d, p);
            return new double[] {h, h / (d + 1)};
        }

        @Override
        List<double[]> starts(double[] d, double[] y) {
            // ln y = a + b/(d + 1)
            return List.of(line(d, i -> 1 / (d[i] + 1), i -> Math.log(y[i])));
        }
    },

    /** a·(1 - exp(-b·d))^c; asymptote a. Tends to the power curve as b goes to 0 and a to infinity. */
    CHAPMAN_RICHARDS(3) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * Math.pow(rising(d, p), p[2]);
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double u = rising(d, p);
            double byA = Math.pow(u, p[2]);
            double byB = p[0] * p[2] * Math.pow(u, p[2] - 1) * d * Math.exp(-p[1] * d);
            return new double[] {byA, byB, p[0] * byA * Math.log(u)};
        }

        private double rising(double d, double[] p) {
            return -Math.expm1(-p[1] * d);
        }

        @Override
        List<double[]> starts(double[] d, double[] y) {
            double top = Arrays.stream(y).max().orElseThrow();
            List<double[]> starts = new ArrayList<>();
            for (double factor : new double[] {1.1, 1.3, 2}) {
                double a = factor * top;
                // with a fixed and c = 1: ln(1 - y/a) = -b·d
                double b = Math.max(1e-4, -line(d, i -> d[i], i -> Math.log(1 - y[i] / a))[1]);
                starts.add(new double[] {a, b, 1});
                starts.add(new double[] {a, b, 1.5});
            }
            return starts;
        }
    },

    /** a·d^b; no asymptote. Serves as the limit of Chapman-Richards. */
    POWER(2) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * Math.pow(d, p[1]);
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double h = Math.pow(d, p[1]);
            return new double[] {h, p[0] * h * Math.log(d)};
        }

        @Override
        List<double[]> starts(double[] d, double[] y) {
            // ln y = ln a + b·ln d
            double[] line = line(d, i -> Math.log(d[i]), i -> Math.log(y[i]));
            return List.of(new double[] {Math.exp(line[0]), line[1]});
        }
    };

    private final int parameters;

    CurveModel(int parameters) {
        this.parameters = parameters;
    }

    int parameters() {
        return parameters;
    }

    /** Starting values from the linear form of the curve; d above 0, y (height above breast height) above 0. */
    abstract List<double[]> starts(double[] d, double[] y);

    static CurveModel of(CurveForm form) {
        return switch (form) {
            case NASLUND -> NASLUND;
            case WYKOFF -> WYKOFF;
            case CHAPMAN_RICHARDS -> CHAPMAN_RICHARDS;
        };
    }

    private interface Axis {
        double at(int i);
    }

    /** Intercept and slope of a straight line through n points. */
    private static double[] line(double[] d, Axis x, Axis y) {
        StraightLine line = StraightLine.through(along(d, x), along(d, y));
        return new double[] {line.intercept(), line.slope()};
    }

    private static double[] along(double[] d, Axis axis) {
        return IntStream.range(0, d.length).mapToDouble(axis::at).toArray();
    }
}
