package quadmean.design;

import java.util.List;
import quadmean.model.Rule;
import quadmean.units.AngleScale;
import quadmean.units.UnitSystem;

/** Reads what {@code [output]} says of field sheets. */
final class SheetParser {
    /** As many columns as one can read in the woods. */
    private static final int MOST_DISTANCES = 8;

    private SheetParser() {}

    static SheetSettings parse(Section output, UnitSystem units) {
        SheetSettings usual = SheetSettings.usual(units);
        return new SheetSettings(
                output.choice("sheet_paper", Options.of(Paper.values(), Paper::id))
                        .orElse(usual.paper()),
                distances(output, units, usual),
                output.choice("sheet_scale", Options.of(AngleScale.values(), AngleScale::id))
                        .orElse(null),
                (int) output.number("sheet_height_every", Range.WHOLE_TO_HUNDRED, usual.heightEvery()));
    }

    private static List<Double> distances(Section output, UnitSystem units, SheetSettings usual) {
        String key = "sheet_distances";
        if (!output.has(key)) {
            return usual.distancesM();
        }
        List<Double> written = output.requiredNumbers(key, Range.SIGHTING_DISTANCE);
        List<Double> sorted = written.stream().distinct().sorted().toList();
        if (sorted.size() > MOST_DISTANCES) {
            output.problem(
                    Rule.DESIGN_VALUE,
                    key,
                    String.valueOf(sorted.size()),
                    "a sheet has room for " + MOST_DISTANCES + " distances; leave out some of the " + sorted.size());
        }
        return SheetSettings.metres(sorted, units);
    }
}
