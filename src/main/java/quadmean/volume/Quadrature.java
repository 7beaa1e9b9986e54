package quadmean.volume;

import java.util.function.DoubleUnaryOperator;

/** Gauss-Legendre quadrature with five points in each of sixteen equal sections: exact for polynomials to degree nine. */
final class Quadrature {
    private static final int SECTIONS = 16;
    private static final double INNER = Math.sqrt(5 - 2 * Math.sqrt(10.0 / 7)) / 3;
    private static final double OUTER = Math.sqrt(5 + 2 * Math.sqrt(10.0 / 7)) / 3;
    private static final double[] POINTS = {-OUTER, -INNER, 0, INNER, OUTER};
    private static final double INNER_WEIGHT = (322 + 13 * Math.sqrt(70)) / 900;
    private static final double OUTER_WEIGHT = (322 - 13 * Math.sqrt(70)) / 900;
    private static final double[] WEIGHTS = {OUTER_WEIGHT, INNER_WEIGHT, 128.0 / 225, INNER_WEIGHT, OUTER_WEIGHT};

    private Quadrature() {}

    static double integral(DoubleUnaryOperator f, double from, double to) {
        double half = (to - from) / SECTIONS / 2;
        double sum = 0;
        for (int section = 0; section < SECTIONS; section++) {
            double middle = from + (2 * section + 1) * half;
            for (int i = 0; i < POINTS.length; i++) {
                sum += WEIGHTS[i] * f.applyAsDouble(middle + POINTS[i] * half);
            }
        }
        return sum * half;
    }
}
