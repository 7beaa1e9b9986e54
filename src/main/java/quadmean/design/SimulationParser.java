package quadmean.design;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import quadmean.design.SimulationSettings.Auxiliary;
import quadmean.design.SimulationSettings.Minutes;
import quadmean.design.SimulationSettings.Prediction;

/** Reads {@code [simulate]}. */
final class SimulationParser {
    private SimulationParser() {}

    static SimulationSettings parse(Section root) {
        if (!root.has("simulate")) {
            return SimulationSettings.NONE;
        }
        Section s = root.table("simulate");
        SimulationSettings usual = SimulationSettings.NONE;
        SimulationSettings settings = new SimulationSettings(
                whole(s, "plots"),
                whole(s, "listed"),
                s.choice("auxiliary", Options.of(Auxiliary.values(), Auxiliary::id))
                        .orElse(usual.auxiliary()),
                s.number("auxiliary_error", Range.NOT_NEGATIVE, 0),
                s.choice("prediction", Options.of(Prediction.values(), Prediction::id))
                        .orElse(usual.prediction()),
                s.number("prediction_error", Range.NOT_NEGATIVE, 0),
                whole(s, "measure_every"),
                new Minutes(
                        s.number("per_tree", Range.NOT_NEGATIVE, 0),
                        s.number("per_height", Range.NOT_NEGATIVE, 0),
                        s.number("per_count", Range.NOT_NEGATIVE, 0)));
        s.close();
        return settings;
    }

    private static OptionalInt whole(Section s, String key) {
        OptionalDouble number = s.number(key, Range.PLOT_COUNT);
        return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
    }
}
