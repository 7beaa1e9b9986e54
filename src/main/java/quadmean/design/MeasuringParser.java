package quadmean.design;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import quadmean.model.Measuring;
import quadmean.model.Rule;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads which trees are measured: of points in {@code [plot]}, and {@code [threep]}. */
final class MeasuringParser {
    private enum Measured {
        ALL,
        SOME_POINTS
    }

    private MeasuringParser() {}

    /** Of a point sample whose factor is known (m²/ha). */
    static Measuring ofPoints(Section root, Section plot, UnitSystem units, double factor) {
        Measured measured = plot.choice(
                        "measured", Options.of(Measured.values(), m -> m.name().toLowerCase(Locale.ROOT)))
                .orElse(Measured.ALL);
        Set<String> points = new HashSet<>(PlotNumbers.expand(plot, "measured_points"));
        boolean larger = plot.has("measure_factor");
        Optional<Measuring> threeP = threeP(root);
        int ways = (measured == Measured.SOME_POINTS ? 1 : 0) + (larger ? 1 : 0) + (threeP.isPresent() ? 1 : 0);
        if (ways > 1) {
            plot.problem(
                    Rule.DESIGN_VALUE,
                    "measured",
                    "",
                    "trees to measure are chosen in one way: measured = \"some_points\", a measure_factor, or [threep]");
        }
        if (measured == Measured.ALL && !points.isEmpty()) {
            plot.problem(
                    Rule.DESIGN_VALUE, "measured_points", "", "measured_points go with measured = \"some_points\"");
        }
        if (larger) {
            return larger(plot, units, factor);
        }
        return measured == Measured.SOME_POINTS ? new Measuring.SomePoints(points) : threeP.orElse(new Measuring.All());
    }

    private static Measuring larger(Section plot, UnitSystem units, double factor) {
        double written = plot.requiredNumber("measure_factor", Range.POSITIVE);
        double larger = units.basalAreaFactor().convert(written, Unit.SQUARE_METRES_PER_HECTARE);
        if (larger < factor) {
            plot.problem(
                    Rule.DESIGN_VALUE,
                    "measure_factor",
                    Section.show(written),
                    "a factor smaller than basal_area_factor would choose trees that were not counted");
        }
        return new Measuring.LargerFactor(larger);
    }

    /** 3P sampling, if the design has the table. */
    static Optional<Measuring> threeP(Section root) {
        if (!root.has("threep")) {
            return Optional.empty();
        }
        Section s = root.table("threep");
        Measuring found = new Measuring.ThreeP(
                s.requiredNumber("limit", Range.POSITIVE),
                s.number("sum_of_predictions", Range.POSITIVE),
                s.choice("estimator", Options.of(Measuring.Estimator.values(), Measuring.Estimator::id))
                        .orElse(Measuring.Estimator.ADJUSTED));
        s.close();
        return Optional.of(found);
    }
}
