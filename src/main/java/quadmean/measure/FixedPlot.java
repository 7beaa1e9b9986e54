package quadmean.measure;

import quadmean.units.PlotOnSlope;

/**
 * A circular plot of fixed size.
 *
 * @param radius horizontal radius (m), above 0
 */
public record FixedPlot(double radius) {
    private static final double M2_PER_HECTARE = 10_000;

    /** @throws IllegalArgumentException if the radius is not above zero */
    public FixedPlot {
        Checks.positive(radius, "the plot radius");
    }

    /**
     * The plot of a horizontal area: r = √(A/π).
     *
     * @param hectares area (ha), above 0
     */
    public static FixedPlot ofArea(double hectares) {
        return new FixedPlot(Math.sqrt(Checks.positive(hectares, "the plot area") * M2_PER_HECTARE / Math.PI));
    }

    /** Horizontal area (ha). */
    public double area() {
        return Math.PI * radius * radius / M2_PER_HECTARE;
    }

    /**
     * The radius of the one larger circle on the ground that keeps the horizontal area: R₀·(1 + s²)^¼ = R₀/√cos θ. An
     * agency table follows it (USDA Forest Service, Common Stand Exam field guide, fixed-radius appendix, table 1).
     *
     * @param fallLine slope of the plot along the fall line
     * @return radius along the ground (m)
     */
    public double radiusOnSlope(Slope fallLine) {
        return radius * Math.sqrt(fallLine.secant());
    }

    /**
     * The length to lay out along the fall line for the horizontal radius: R₀·√(1 + s²). It holds in that direction
     * only; used all round as one radius it makes the plot larger by {@link Slope#errorOfIgnoring()}.
     *
     * @param fallLine slope of the plot along the fall line
     * @return length along the ground (m)
     */
    public double lengthAlongFallLine(Slope fallLine) {
        return fallLine.along(radius);
    }

    /**
     * The distance along the ground up to which a tree's centre is in.
     *
     * @param method how the plot is laid out
     * @param fallLine slope of the plot along the fall line
     * @param toTree slope along the line from the plot centre to the tree
     * @return distance along the ground (m)
     */
    public double limit(PlotOnSlope method, Slope fallLine, Slope toTree) {
        return switch (method) {
            case HORIZONTAL_DISTANCES -> toTree.along(radius);
            case LARGER_RADIUS -> radiusOnSlope(fallLine);
        };
    }
}
