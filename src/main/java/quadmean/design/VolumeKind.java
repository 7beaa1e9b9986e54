package quadmean.design;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import quadmean.model.Rule;
import quadmean.units.Quantity;
import quadmean.units.Unit;

/** What an equation for volume may give where it stands. */
enum VolumeKind {
    CUBIC("volume", "cubic volume", "board feet go in [board_feet.CODE]"),
    BOARD_FEET("board_feet", "board feet", "cubic volume goes in [volume.CODE]"),
    /** In the library. */
    EITHER("volume", "volume", "");

    private final String key;
    private final String label;
    private final String elsewhere;

    VolumeKind(String key, String label, String elsewhere) {
        this.key = key;
        this.label = label;
        this.elsewhere = elsewhere;
    }

    /** The key of its tables in a design. */
    String key() {
        return key;
    }

    /** What it is, in words. */
    String label() {
        return label;
    }

    /** Where equations of the other kind belong. */
    String elsewhere() {
        return elsewhere;
    }

    boolean holds(Unit unit) {
        return units().contains(unit);
    }

    /** The unit of volume that a table states; one of the wrong kind is noted with where it belongs. */
    Unit unit(Stated s) {
        Section table = s.at("volume_unit");
        Optional<Unit> stated = EITHER.units().stream()
                .filter(u -> table.isText("volume_unit")
                        && table.text("volume_unit").filter(u.symbol()::equals).isPresent())
                .findFirst();
        if (stated.filter(u -> !holds(u)).isPresent()) {
            String symbol = stated.get().symbol();
            String detail = table.path() + " gives " + label + ", not " + symbol + "; " + elsewhere;
            table.problem(Rule.DESIGN_VALUE, "volume_unit", symbol, detail);
            return stated.get();
        }
        return s.required("volume_unit", Options.of(units(), Unit::symbol)).orElse(units().get(0));
    }

    private List<Unit> units() {
        List<Unit> cubic = Unit.of(Quantity.VOLUME);
        List<Unit> board = Unit.of(Quantity.BOARD_MEASURE);
        return switch (this) {
            case CUBIC -> cubic;
            case BOARD_FEET -> board;
            case EITHER -> Stream.concat(cubic.stream(), board.stream()).toList();
        };
    }
}
