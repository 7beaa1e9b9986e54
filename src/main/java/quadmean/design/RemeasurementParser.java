package quadmean.design;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quadmean.design.RemeasurementSettings.Absent;
import quadmean.model.Rule;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [remeasurement]}. */
final class RemeasurementParser {
    private RemeasurementParser() {}

    static Optional<RemeasurementSettings> parse(Section root, Path file, UnitSystem units, List<TallyFile> cruise) {
        if (!root.has("remeasurement")) {
            return Optional.empty();
        }
        Section s = root.table("remeasurement");
        List<TallyFile> tallies = SecondTallies.parse(
                s, file, cruise, "a [[remeasurement.tally]] table with the tally of the earlier date");
        for (TallyFile t : tallies) {
            if (!t.columns().containsKey(ColumnRole.TREE)) {
                s.problem(
                        Rule.DESIGN_MISSING,
                        "tally",
                        t.name(),
                        "trees of permanent plots are found again by their numbers: name the column tree of "
                                + t.name());
            }
        }
        OptionalDouble growth = s.number("largest_growth", Range.POSITIVE);
        RemeasurementSettings settings = new RemeasurementSettings(
                tallies,
                s.requiredNumber("years", Range.POSITIVE),
                s.choice("absent", Options.of(Absent.values(), Absent::id)).orElse(Absent.REFUSE),
                growth.isPresent()
                        ? OptionalDouble.of(units.diameter().convert(growth.getAsDouble(), Unit.CENTIMETRE))
                        : growth);
        String kind = root.table("plot").text("kind").orElse("");
        if (growth.isEmpty() && (kind.equals("point") || kind.equals("nested"))) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "largest_growth",
                    "",
                    "\"remeasurement.largest_growth\" is missing: on points and nested plots it parts new trees that have grown"
                            + " in from those that were large enough before");
        }
        s.close();
        return Optional.of(settings);
    }
}
