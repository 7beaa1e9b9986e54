package quadmean.stats;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.commons.math3.dfp.Dfp;
import org.apache.commons.math3.dfp.DfpField;
import quadmean.stats.LeastSquaresProblem.Curve;
import quadmean.stats.LeastSquaresProblem.Model;
import quadmean.support.ReferenceFiles;

/** The models of strd.json (NIST Statistical Reference Datasets) with their derivatives. */
final class CertifiedProblems {
    private CertifiedProblems() {}

    private static final Curve SATURATION = model((x, b) -> -b[0] * Math.expm1(-b[1] * x), (x, b) ->
            new double[] {-Math.expm1(-b[1] * x), b[0] * x * Math.exp(-b[1] * x)});

    private static final Curve DECAY_OVER_LINE = model((x, b) -> Math.exp(-b[0] * x) / (b[1] + b[2] * x), (x, b) -> {
        double y = Math.exp(-b[0] * x) / (b[1] + b[2] * x);
        double z = y / (b[1] + b[2] * x);
        return new double[] {-x * y, -z, -x * z};
    });

    private static final Curve TWO_PEAKS = model(
            (x, b) -> b[0] * Math.exp(-b[1] * x) + peak(x, b[2], b[3], b[4]) + peak(x, b[5], b[6], b[7]), (x, b) -> {
                double decay = Math.exp(-b[1] * x);
                double one = peak(x, 1, b[3], b[4]);
                double two = peak(x, 1, b[6], b[7]);
                double u = (x - b[3]) / b[4];
                double v = (x - b[6]) / b[7];
                return new double[] {
                    decay,
                    -b[0] * x * decay,
                    one,
                    2 * b[2] * one * u / b[4],
                    2 * b[2] * one * u * u / b[4],
                    two,
                    2 * b[5] * two * v / b[7],
                    2 * b[5] * two * v * v / b[7]
                };
            });

    private static final Curve THREE_DECAYS = model(
            (x, b) -> b[0] * Math.exp(-b[1] * x) + b[2] * Math.exp(-b[3] * x) + b[4] * Math.exp(-b[5] * x), (x, b) -> {
                double[] g = new double[6];
                for (int k = 0; k < 6; k += 2) {
                    g[k] = Math.exp(-b[k + 1] * x);
                    g[k + 1] = -b[k] * x * g[k];
                }
                return g;
            });

    private static final Curve DECAYS_FROM_A_LEVEL =
            model((x, b) -> b[0] + b[1] * Math.exp(-x * b[3]) + b[2] * Math.exp(-x * b[4]), (x, b) -> {
                double one = Math.exp(-x * b[3]);
                double two = Math.exp(-x * b[4]);
                return new double[] {1, one, two, -x * b[1] * one, -x * b[2] * two};
            });

    private static final Curve ROSZMAN =
            model((x, b) -> b[0] - b[1] * x - Math.atan(b[2] / (x - b[3])) / Math.PI, (x, b) -> {
                double u = x - b[3];
                double z = Math.PI * (u * u + b[2] * b[2]);
                return new double[] {1, -x, -u / z, -b[2] / z};
            });

    static final Map<String, Model> MODELS = Map.ofEntries(
            Map.entry("BoxBOD", SATURATION),
            Map.entry("Misra1a", SATURATION),
            Map.entry("Misra1b", model((x, b) -> b[0] * (1 - Math.pow(1 + b[1] * x / 2, -2)), (x, b) ->
                    new double[] {1 - Math.pow(1 + b[1] * x / 2, -2), b[0] * x * Math.pow(1 + b[1] * x / 2, -3)})),
            Map.entry("Misra1c", model((x, b) -> b[0] * (1 - Math.pow(1 + 2 * b[1] * x, -0.5)), (x, b) ->
                    new double[] {1 - Math.pow(1 + 2 * b[1] * x, -0.5), b[0] * x * Math.pow(1 + 2 * b[1] * x, -1.5)})),
            Map.entry("Misra1d", model((x, b) -> b[0] * b[1] * x / (1 + b[1] * x), (x, b) ->
                    new double[] {b[1] * x / (1 + b[1] * x), b[0] * x / Math.pow(1 + b[1] * x, 2)})),
            Map.entry("DanWood", model((x, b) -> b[0] * Math.pow(x, b[1]), (x, b) ->
                    new double[] {Math.pow(x, b[1]), b[0] * Math.pow(x, b[1]) * Math.log(x)})),
            Map.entry("Chwirut1", DECAY_OVER_LINE),
            Map.entry("Chwirut2", DECAY_OVER_LINE),
            Map.entry("Rat42", model((x, b) -> b[0] / (1 + Math.exp(b[1] - b[2] * x)), (x, b) -> {
                double e = Math.exp(b[1] - b[2] * x);
                double z = b[0] * e / ((1 + e) * (1 + e));
                return new double[] {1 / (1 + e), -z, x * z};
            })),
            Map.entry("ENSO", model(CertifiedProblems::cycles, CertifiedProblems::cycleGradient)),
            Map.entry("Gauss1", TWO_PEAKS),
            Map.entry("Gauss2", TWO_PEAKS),
            Map.entry("Gauss3", TWO_PEAKS),
            Map.entry("Lanczos1", new ThreeDecaysToFortyDigits()),
            Map.entry("Lanczos2", THREE_DECAYS),
            Map.entry("Lanczos3", THREE_DECAYS),
            Map.entry("MGH17", DECAYS_FROM_A_LEVEL),
            Map.entry("Nelson", new Breakdown()),
            Map.entry("Roszman1", ROSZMAN));

    private static double peak(double x, double height, double at, double width) {
        return height * Math.exp(-(x - at) * (x - at) / (width * width));
    }

    private static double cycles(double x, double[] b) {
        double year = 2 * Math.PI * x / 12;
        double one = 2 * Math.PI * x / b[3];
        double two = 2 * Math.PI * x / b[6];
        return b[0]
                + b[1] * Math.cos(year)
                + b[2] * Math.sin(year)
                + b[4] * Math.cos(one)
                + b[5] * Math.sin(one)
                + b[7] * Math.cos(two)
                + b[8] * Math.sin(two);
    }

    private static double[] cycleGradient(double x, double[] b) {
        double year = 2 * Math.PI * x / 12;
        double one = 2 * Math.PI * x / b[3];
        double two = 2 * Math.PI * x / b[6];
        return new double[] {
            1,
            Math.cos(year),
            Math.sin(year),
            one / b[3] * (b[4] * Math.sin(one) - b[5] * Math.cos(one)),
            Math.cos(one),
            Math.sin(one),
            two / b[6] * (b[7] * Math.sin(two) - b[8] * Math.cos(two)),
            Math.cos(two),
            Math.sin(two)
        };
    }

    /** Nelson: the response is the logarithm, and there are two predictors. */
    private static final class Breakdown implements Model {
        @Override
        public double value(double[] x, double[] b) {
            return b[0] - b[1] * x[0] * Math.exp(-b[2] * x[1]);
        }

        @Override
        public double[] gradient(double[] x, double[] b) {
            double e = x[0] * Math.exp(-b[2] * x[1]);
            return new double[] {1, -e, b[1] * x[1] * e};
        }
    }

    /**
     * Lanczos1 was made to twelve decimals from an exact sum, so its residuals, about 1e-13, are smaller than a double
     * next to 2.5 can tell to more than two digits. They are worked out to forty digits here; the responses are the
     * decimals as NIST prints them.
     */
    private static final class ThreeDecaysToFortyDigits implements Curve {
        private static final DfpField FIELD = new DfpField(40);

        @Override
        public double value(double x, double[] b) {
            return THREE_DECAYS.value(x, b);
        }

        @Override
        public double[] gradient(double x, double[] b) {
            return THREE_DECAYS.gradient(x, b);
        }

        @Override
        public double residual(double[] x, double y, double[] b) {
            double rough = y - value(x[0], b);
            if (Math.abs(rough) > 1e-6) {
                return rough;
            }
            Dfp rest = FIELD.newDfp(Double.toString(y));
            Dfp at = FIELD.newDfp(Double.toString(x[0]));
            for (int k = 0; k < 6; k += 2) {
                Dfp decay = at.multiply(FIELD.newDfp(-b[k + 1])).exp();
                rest = rest.subtract(FIELD.newDfp(b[k]).multiply(decay));
            }
            return rest.toDouble();
        }
    }

    static Stream<JsonNode> all() {
        return StreamSupport.stream(ReferenceFiles.json("strd.json").get("sets").spliterator(), false);
    }

    /** A problem from these starts; Nelson's response is taken as the logarithm of the column, as its model says. */
    static LeastSquaresProblem problem(JsonNode set, double[]... starts) {
        String name = set.get("name").asText();
        double[] y = column(set, 0);
        if (set.get("model").asText().startsWith("log[y]")) {
            y = java.util.Arrays.stream(y).map(Math::log).toArray();
        }
        double[][] x = new double[y.length][set.get("columns").size() - 1];
        for (int k = 0; k < x[0].length; k++) {
            double[] column = column(set, k + 1);
            for (int i = 0; i < y.length; i++) {
                x[i][k] = column[i];
            }
        }
        Model model = java.util.Objects.requireNonNull(MODELS.get(name), name);
        return LeastSquaresProblem.unweighted(model, x, y, java.util.List.of(starts));
    }

    /** One value of every parameter: {@code start1}, {@code start2}, {@code certified}, {@code standard_deviation}. */
    static double[] parameters(JsonNode set, String what) {
        return StreamSupport.stream(set.get("parameters").spliterator(), false)
                .mapToDouble(p -> ReferenceFiles.number(p.get(what)))
                .toArray();
    }

    private static double[] column(JsonNode set, int column) {
        return StreamSupport.stream(set.get("data").spliterator(), false)
                .mapToDouble(row -> ReferenceFiles.number(row.get(column)))
                .toArray();
    }

    interface Value {
        double at(double x, double[] b);
    }

    interface Gradient {
        double[] at(double x, double[] b);
    }

    static Curve model(Value value, Gradient gradient) {
        return new Curve() {
            @Override
            public double value(double x, double[] parameters) {
                return value.at(x, parameters);
            }

            @Override
            public double[] gradient(double x, double[] parameters) {
                return gradient.at(x, parameters);
            }
        };
    }
}
