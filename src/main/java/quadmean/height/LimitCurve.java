package quadmean.height;

import java.util.List;
import java.util.stream.IntStream;

/** Curves without an asymptote: what forms with one become when it recedes to infinity. The power curve is also a form. */
enum LimitCurve implements CurveModel {
    /** a·d^b. */
    POWER(2, "the power curve a·d^b") {
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
        public List<double[]> starts(double[] d, double[] y) {
            // ln y = ln a + b·ln d
            double[] line = LinearForm.line(d.length, i -> Math.log(d[i]), i -> Math.log(y[i]));
            return List.of(new double[] {Math.exp(line[0]), line[1]});
        }
    },

    /** a·exp(b·d). */
    EXPONENTIAL(2, "the exponential a·exp(b·d)") {
        @Override
        public double value(double d, double[] p) {
            return p[0] * Math.exp(p[1] * d);
        }

        @Override
        public double[] gradient(double d, double[] p) {
            double e = Math.exp(p[1] * d);
            return new double[] {e, p[0] * e * d};
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            // ln y = ln a + b·d
            double[] line = LinearForm.line(d.length, i -> d[i], i -> Math.log(y[i]));
            return List.of(new double[] {Math.exp(line[0]), line[1]});
        }
    },

    /** a·d. */
    PROPORTIONAL(1, "the line a·d") {
        @Override
        public double value(double d, double[] p) {
            return p[0] * d;
        }

        @Override
        public double[] gradient(double d, double[] p) {
            return new double[] {d};
        }

        @Override
        public List<double[]> starts(double[] d, double[] y) {
            return List.of(new double[] {
                IntStream.range(0, d.length)
                        .mapToDouble(i -> y[i] / d[i])
                        .average()
                        .orElseThrow()
            });
        }
    };

    private final int parameters;
    private final String words;

    LimitCurve(int parameters, String words) {
        this.parameters = parameters;
        this.words = words;
    }

    /** The curve in words, without breast height. */
    String words() {
        return words;
    }

    @Override
    public int parameters() {
        return parameters;
    }

    @Override
    public double asymptote(double[] p) {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double inflection(double[] p) {
        return Double.NaN;
    }
}
