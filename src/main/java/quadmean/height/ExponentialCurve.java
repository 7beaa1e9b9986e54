package quadmean.height;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Curve forms whose logarithm falls back from an asymptote with small dbh. */
enum ExponentialCurve implements CurveModel {
    /** a·exp(-b/d). */
    MICHAILOFF(2) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * Math.exp(-p[1] / d);
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double e = Math.exp(-p[1] / d);
            return new double[] {e, -p[0] * e / d};
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // ln y = ln a - b/d
            double[] line = LinearForm.line(d.length, i -> 1 / d[i], i -> Math.log(y[i]));
            return List.of(new double[] {Math.exp(line[0]), -line[1]});
        }

        @Override
        public double asymptote(double[] p) {
            return p[0];
        }

        @Override
        public double inflection(double[] p) {
            return p[1] / 2;
        }
    },

    /** a·(d/(1 + d))^b. */
    CURTIS(2) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * Math.pow(d / (1 + d), p[1]);
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double power = Math.pow(d / (1 + d), p[1]);
            return new double[] {power, p[0] * power * Math.log(d / (1 + d))};
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // ln y = ln a + b·ln(d/(1 + d))
            double[] line = LinearForm.line(d.length, i -> Math.log(d[i] / (1 + d[i])), i -> Math.log(y[i]));
            return List.of(new double[] {Math.exp(line[0]), line[1]});
        }

        @Override
        public double asymptote(double[] p) {
            return p[0];
        }

        @Override
        public double inflection(double[] p) {
            return p[1] > 1 ? (p[1] - 1) / 2 : Double.NaN;
        }
    },

    /** exp(a + b/(d + 1)). */
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
        public List<double[]> starts(double[] d, double[] y) {
            // ln y = a + b/(d + 1)
            return List.of(LinearForm.line(d.length, i -> 1 / (d[i] + 1), i -> Math.log(y[i])));
        }

        @Override
        public double asymptote(double[] p) {
            return Math.exp(p[0]);
        }

        @Override
        public double inflection(double[] p) {
            return p[1] < -2 ? -p[1] / 2 - 1 : Double.NaN;
        }
    },

    /** a·exp(-b·d^-c). Tends to the power curve as c goes to 0 and a and b to infinity. */
    KORF(3) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * Math.exp(-p[1] * Math.pow(d, -p[2]));
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double power = Math.pow(d, -p[2]);
            double e = Math.exp(-p[1] * power);
            return new double[] {e, -p[0] * e * power, p[0] * e * p[1] * power * Math.log(d)};
        }

        @Override
        public boolean accepts(double[] p) {
            return CurveModel.positive(p);
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // with a fixed: ln(-ln(y/a)) = ln b - c·ln d
            return LinearForm.overAsymptotes(y, a -> {
                double[] line = LinearForm.line(d.length, i -> Math.log(d[i]), i -> Math.log(-Math.log(y[i] / a)));
                return new double[] {a, Math.exp(line[0]), Math.max(0.05, -line[1])};
            });
        }

        @Override
        public double asymptote(double[] p) {
            return p[0];
        }

        @Override
        public double inflection(double[] p) {
            return Math.pow(p[1] * p[2] / (p[2] + 1), 1 / p[2]);
        }

        @Override
        public Optional<LimitCurve> limit() {
            return Optional.of(LimitCurve.POWER);
        }
    },

    /** a·exp(-b/(d + c)). Tends to an exponential as all parameters go to infinity. */
    RATKOWSKY(3) {
        @Override
        public double value(double d, double[] p) {
            return p[0] * Math.exp(-p[1] / (d + p[2]));
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double e = Math.exp(-p[1] / (d + p[2]));
            double below = d + p[2];
            return new double[] {e, -p[0] * e / below, p[0] * e * p[1] / (below * below)};
        }

        /** Without c above 0 the curve has a pole at a dbh. */
        @Override
        public boolean accepts(double[] p) {
            return CurveModel.positive(p[0], p[1]) && p[2] >= 0;
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // with c fixed: ln y = ln a - b/(d + c); the values of c are common practice, no source
            return DoubleStream.of(1, 5, 20)
                    .mapToObj(c -> {
                        double[] line = LinearForm.line(d.length, i -> 1 / (d[i] + c), i -> Math.log(y[i]));
                        return new double[] {Math.exp(line[0]), Math.max(0.1, -line[1]), c};
                    })
                    .toList();
        }

        @Override
        public double asymptote(double[] p) {
            return p[0];
        }

        @Override
        public double inflection(double[] p) {
            return p[1] / 2 > p[2] ? p[1] / 2 - p[2] : Double.NaN;
        }

        @Override
        public Optional<LimitCurve> limit() {
            return Optional.of(LimitCurve.EXPONENTIAL);
        }
    };

    private final int parameters;

    ExponentialCurve(int parameters) {
        this.parameters = parameters;
    }

    @Override
    public int parameters() {
        return parameters;
    }
}
