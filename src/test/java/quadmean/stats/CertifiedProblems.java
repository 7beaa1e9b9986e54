package quadmean.stats;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import quadmean.support.ReferenceFiles;

/** The models of strd.json (NIST Statistical Reference Datasets) with their derivatives. */
final class CertifiedProblems {
    private CertifiedProblems() {}

    private static final LeastSquaresProblem.Model SATURATION = model((x, b) -> -b[0] * Math.expm1(-b[1] * x), (x, b) ->
            new double[] {-Math.expm1(-b[1] * x), b[0] * x * Math.exp(-b[1] * x)});

    static final Map<String, LeastSquaresProblem.Model> MODELS =
            Map.of(
                    "BoxBOD", SATURATION,
                    "Misra1a", SATURATION,
                    "Misra1b",
                            model((x, b) -> b[0] * (1 - Math.pow(1 + b[1] * x / 2, -2)), (x, b) -> new double[] {
                                1 - Math.pow(1 + b[1] * x / 2, -2), b[0] * x * Math.pow(1 + b[1] * x / 2, -3)
                            }),
                    "Misra1c",
                            model((x, b) -> b[0] * (1 - Math.pow(1 + 2 * b[1] * x, -0.5)), (x, b) -> new double[] {
                                1 - Math.pow(1 + 2 * b[1] * x, -0.5), b[0] * x * Math.pow(1 + 2 * b[1] * x, -1.5)
                            }),
                    "Misra1d",
                            model((x, b) -> b[0] * b[1] * x / (1 + b[1] * x), (x, b) ->
                                    new double[] {b[1] * x / (1 + b[1] * x), b[0] * x / Math.pow(1 + b[1] * x, 2)}),
                    "DanWood",
                            model((x, b) -> b[0] * Math.pow(x, b[1]), (x, b) ->
                                    new double[] {Math.pow(x, b[1]), b[0] * Math.pow(x, b[1]) * Math.log(x)}),
                    "Chwirut2",
                            model((x, b) -> Math.exp(-b[0] * x) / (b[1] + b[2] * x), (x, b) -> {
                                double y = Math.exp(-b[0] * x) / (b[1] + b[2] * x);
                                double z = y / (b[1] + b[2] * x);
                                return new double[] {-x * y, -z, -x * z};
                            }),
                    "Rat42",
                            model((x, b) -> b[0] / (1 + Math.exp(b[1] - b[2] * x)), (x, b) -> {
                                double e = Math.exp(b[1] - b[2] * x);
                                double z = b[0] * e / ((1 + e) * (1 + e));
                                return new double[] {1 / (1 + e), -z, x * z};
                            }));

    static Stream<JsonNode> all() {
        return StreamSupport.stream(ReferenceFiles.json("strd.json").get("sets").spliterator(), false);
    }

    /** One value of every parameter: {@code start1}, {@code start2}, {@code certified}, {@code standard_deviation}. */
    static double[] parameters(JsonNode set, String what) {
        return StreamSupport.stream(set.get("parameters").spliterator(), false)
                .mapToDouble(p -> ReferenceFiles.number(p.get(what)))
                .toArray();
    }

    /** A column of the data: 0 for y, 1 for x. */
    static double[] column(JsonNode set, int column) {
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

    static LeastSquaresProblem.Model model(Value value, Gradient gradient) {
        return new LeastSquaresProblem.Model() {
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
