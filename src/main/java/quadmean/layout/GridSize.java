package quadmean.layout;

import java.util.OptionalDouble;
import quadmean.design.LayoutSettings;
import quadmean.design.LayoutSettings.Pattern;

/** The grid of a design: from its spacing, or from the ground that each of n plots has. */
final class GridSize {
    private GridSize() {}

    /**
     * The grid.
     *
     * @param area ground (m² on the grid)
     * @param n plots asked for, used where no spacing is given
     * @param degrees direction of the lines, clockwise from the grid's north
     * @param scale length on the grid over length on the ground
     */
    static GridPattern of(LayoutSettings settings, double area, int n, double degrees, double scale) {
        OptionalDouble spacing = settings.spacingM();
        double cell = area / n;
        if (settings.pattern() == Pattern.RECTANGULAR) {
            double across = scale * settings.rowSpacingM().orElseThrow();
            return new GridPattern(
                    spacing.isPresent() ? scale * spacing.getAsDouble() : cell / across, across, 0, degrees);
        }
        if (settings.pattern() == Pattern.TRIANGULAR) {
            return GridPattern.triangular(
                    spacing.isPresent() ? scale * spacing.getAsDouble() : Math.sqrt(cell / Math.sqrt(0.75)), degrees);
        }
        return GridPattern.square(spacing.isPresent() ? scale * spacing.getAsDouble() : Math.sqrt(cell), degrees);
    }
}
