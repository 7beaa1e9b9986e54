package quadmean.height;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Curve forms that near their asymptote exponentially. */
enum SaturatingCurve implements CurveModel {
    /** a·(1 - exp(-b·d)). Tends to a line through the origin as a goes to infinity and b to 0. */
    MEYER(2, LimitCurve.PROPORTIONAL) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * -Math.expm1(-p[1] * d);
        }

        @Override
        public double[] gradient(double d, double[] p) {
            return new double[] {-Math.expm1(-p[1] * d), p[0] * d * Math.exp(-p[1] * d)};
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            return LinearForm.overAsymptotes(y, a -> new double[] {a, rate(d, y, a)});
        }

        @Override
        public double inflection(double[] p) {
            return Double.NaN;
        }
    },

    /** a·(1 - exp(-b·d))^c. Tends to the power curve as b goes to 0 and a to infinity. */
    CHAPMAN_RICHARDS(3, LimitCurve.POWER) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * Math.pow(-Math.expm1(-p[1] * d), p[2]);
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double u = -Math.expm1(-p[1] * d);
            double byA = Math.pow(u, p[2]);
            double byB = p[0] * p[2] * Math.pow(u, p[2] - 1) * d * Math.exp(-p[1] * d);
            return new double[] {byA, byB, p[0] * byA * Math.log(u)};
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            List<double[]> starts = new ArrayList<>();
            for (double c : new double[] {1, 1.5}) {
                starts.addAll(LinearForm.overAsymptotes(y, a -> new double[] {a, rate(d, y, a), c}));
            }
            return starts;
        }

        @Override
        public double inflection(double[] p) {
            return p[2] > 1 ? Math.log(p[2]) / p[1] : Double.NaN;
        }
    },

    /** a·(1 - exp(-b·d^c)). Tends to the power curve as b goes to 0 and a to infinity. */
    WEIBULL(3, LimitCurve.POWER) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * -Math.expm1(-p[1] * Math.pow(d, p[2]));
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double power = Math.pow(d, p[2]);
            double byB = p[0] * power * Math.exp(-p[1] * power);
            return new double[] {-Math.expm1(-p[1] * power), byB, byB * p[1] * Math.log(d)};
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // with a fixed: ln(-ln(1 - y/a)) = ln b + c·ln d
            return LinearForm.overAsymptotes(y, a -> {
                double[] line = LinearForm.line(d.length, i -> Math.log(d[i]), i -> Math.log(-Math.log1p(-y[i] / a)));
                return new double[] {a, Math.exp(line[0]), Math.max(0.05, line[1])};
            });
        }

        @Override
        public double inflection(double[] p) {
            return p[2] > 1 ? Math.pow((p[2] - 1) / (p[1] * p[2]), 1 / p[2]) : Double.NaN;
        }
    },

    /** a/(1 + b·exp(-c·d)). Tends to an exponential as a and b go to infinity together. */
    LOGISTIC(3, LimitCurve.EXPONENTIAL) {
        @Override
        public double value(double d, double[] p) {
            return p[0] / (1 + p[1] * Math.exp(-p[2] * d));
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double e = Math.exp(-p[2] * d);
            double share = 1 / (1 + p[1] * e);
            double slope = p[0] * share * share * e;
            return new double[] {share, -slope, slope * p[1] * d};
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // with a fixed: ln(a/y - 1) = ln b - c·d
            return LinearForm.overAsymptotes(y, a -> {
                double[] line = LinearForm.line(d.length, i -> d[i], i -> Math.log(a / y[i] - 1));
                return new double[] {a, Math.exp(line[0]), Math.max(1e-3, -line[1])};
            });
        }

        @Override
        public double inflection(double[] p) {
            return p[1] > 1 ? Math.log(p[1]) / p[2] : Double.NaN;
        }
    },

    /** a·exp(-b·exp(-c·d)). Tends to an exponential as a and b go to infinity and c to 0. */
    GOMPERTZ(3, LimitCurve.EXPONENTIAL) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * Math.exp(-p[1] * Math.exp(-p[2] * d));
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double e = Math.exp(-p[2] * d);
            double share = Math.exp(-p[1] * e);
            double slope = p[0] * share * e;
            return new double[] {share, -slope, slope * p[1] * d};
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // with a fixed: ln(-ln(y/a)) = ln b - c·d
            return LinearForm.overAsymptotes(y, a -> {
                double[] line = LinearForm.line(d.length, i -> d[i], i -> Math.log(-Math.log(y[i] / a)));
                return new double[] {a, Math.exp(line[0]), Math.max(1e-3, -line[1])};
            });
        }

        @Override
        public double inflection(double[] p) {
            return p[1] > 1 ? Math.log(p[1]) / p[2] : Double.NaN;
        }
    };

    private final int parameters;
    private final LimitCurve limit;

    SaturatingCurve(int parameters, LimitCurve limit) {
        this.parameters = parameters;
        this.limit = limit;
    }

    @Override
    public int parameters() {
        return parameters;
    }

    @Override
    public boolean accepts(double[] p) {
        return CurveModel.positive(p);
    }

    @Override
    public double asymptote(double[] p) {
        return p[0];
    }

    @Override
    public Optional<LimitCurve> limit() {
        return Optional.of(limit);
    }

    /** With a fixed and an exponent of 1, ln(1 - y/a) = -b·d. */
    private static double rate(double[] d, double[] y, double a) {
        return Math.max(1e-4, -LinearForm.line(d.length, i -> d[i], i -> Math.log1p(-y[i] / a))[1]);
    }
}
