package quadmean.height;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Curve forms that are ratios of powers of dbh. */
enum RationalCurve implements CurveModel {
    /** d²/(a + b·d)². */
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
        public List<double[]> starts(double[] d, double[] y) {
            // d/√y = a + b·d
            return List.of(LinearForm.line(d.length, i -> d[i], i -> d[i] / Math.sqrt(y[i])));
        }

        @Override
        public double asymptote(double[] p) {
            return 1 / (p[1] * p[1]);
        }

        @Override
        public double inflection(double[] p) {
            return p[0] / (2 * p[1]);
        }
    },

    /** d³/(a + b·d)³. */
    NASLUND_CUBED(2) {
        @Override
        public double value(double d, double[] p) {
            return Math.pow(d / (p[0] + p[1] * d), 3);
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double slope = -3 * value(d, p) / (p[0] + p[1] * d);
            return new double[] {slope, slope * d};
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // d/y^⅓ = a + b·d
            return List.of(LinearForm.line(d.length, i -> d[i], i -> d[i] / Math.cbrt(y[i])));
        }

        @Override
        public double asymptote(double[] p) {
            return Math.pow(p[1], -3);
        }

        @Override
        public double inflection(double[] p) {
            return p[0] / p[1];
        }
    },

    /** a·d/(b + d). Tends to a line through the origin as a and b go to infinity together. */
    HYPERBOLIC(2) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * d / (p[1] + d);
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double share = d / (p[1] + d);
            return new double[] {share, -p[0] * share / (p[1] + d)};
        }

        @Override
        public boolean accepts(double[] p) {
            return CurveModel.positive(p);
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // d/y = b/a + d/a; where that line falls, a guess of the asymptote
            double[] line = LinearForm.line(d.length, i -> d[i], i -> d[i] / y[i]);
            double[] linear = {1 / line[1], line[0] / line[1]};
            List<double[]> guesses = LinearForm.overAsymptotes(y, a -> new double[] {a, a * middle(d) / middle(y)});
            return CurveModel.positive(linear)
                    ? List.of(linear, guesses.get(0), guesses.get(guesses.size() - 1))
                    : guesses;
        }

        private double middle(double[] values) {
            return DoubleStream.of(values).average().orElseThrow();
        }

        @Override
        public double asymptote(double[] p) {
            return p[0];
        }

        @Override
        public double inflection(double[] p) {
            return Double.NaN;
        }

        @Override
        public Optional<LimitCurve> limit() {
            return Optional.of(LimitCurve.PROPORTIONAL);
        }
    },

    /** d²/(a + b·d + c·d²). */
    PRODAN(3) {
        @Override
        public double value(double d, double[] p) {
            return d * d / below(d, p);
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double q = below(d, p);
            double slope = -d * d / (q * q);
            return new double[] {slope, slope * d, slope * d * d};
        }

        private double below(double d, double[] p) {
            return p[0] + d * (p[1] + d * p[2]);
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // d/y = b + c·d with a = 0, and a tenth of the middle of d²/y for a
            double[] line = LinearForm.line(d.length, i -> d[i], i -> d[i] / y[i]);
            double middle = 0;
            for (int i = 0; i < d.length; i++) {
                middle += d[i] * d[i] / y[i] / d.length;
            }
            return List.of(new double[] {0, line[0], line[1]}, new double[] {0.1 * middle, line[0], line[1]});
        }

        @Override
        public double asymptote(double[] p) {
            return 1 / p[2];
        }

        /** The root of b·c·d³ + 3·a·c·d² = a² above zero, by bisection, where all parameters are positive. */
        @Override
        public double inflection(double[] p) {
            if (!CurveModel.positive(p)) {
                return Double.NaN;
            }
            double low = 0;
            double high = Math.sqrt(p[0] / (3 * p[2]));
            while (Math.nextUp(low) < high && low + (high - low) / 2 > low && low + (high - low) / 2 < high) {
                double d = low + (high - low) / 2;
                boolean isBelow = p[2] * d * d * (p[1] * d + 3 * p[0]) < p[0] * p[0];
                low = isBelow ? d : low;
                high = isBelow ? high : d;
            }
            return high;
        }
    },

    /** a/(1 + 1/(b·d^c)). Tends to the power curve as a goes to infinity and b to 0. */
    HOSSFELD(3) {
        @Override
        public double value(double d, double[] p) {
            return p[0] / (1 + 1 / (p[1] * Math.pow(d, p[2])));
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double z = p[1] * Math.pow(d, p[2]);
            double slope = p[0] * z / ((1 + z) * (1 + z));
            return new double[] {z / (1 + z), slope / p[1], slope * Math.log(d)};
        }

        @Override
        public boolean accepts(double[] p) {
            return CurveModel.positive(p);
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // with a fixed: ln(y/(a - y)) = ln b + c·ln d
            return LinearForm.overAsymptotes(y, a -> {
                double[] line = LinearForm.line(d.length, i -> Math.log(d[i]), i -> Math.log(y[i] / (a - y[i])));
                return new double[] {a, Math.exp(line[0]), Math.max(0.05, line[1])};
            });
        }

        @Override
        public double asymptote(double[] p) {
            return p[0];
        }

        @Override
        public double inflection(double[] p) {
            return p[2] > 1 ? Math.pow((p[2] - 1) / (p[1] * (p[2] + 1)), 1 / p[2]) : Double.NaN;
        }

        @Override
        public Optional<LimitCurve> limit() {
            return Optional.of(LimitCurve.POWER);
        }
    };

    private final int parameters;

    RationalCurve(int parameters) {
        this.parameters = parameters;
    }

    @Override
    public int parameters() {
        return parameters;
    }
}
