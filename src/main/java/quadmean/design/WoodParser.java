package quadmean.design;

import java.util.Map;
import quadmean.units.UnitSystem;

/** Reads what a design says of wood besides the cubic volume of trees. */
final class WoodParser {
    private WoodParser() {}

    static WoodSettings parse(Section root, Map<String, SpeciesEntry> species, UnitSystem units) {
        WeightParser weight = new WeightParser(root, species);
        LogsParser logs = new LogsParser(root, species, units);
        WoodSettings wood = new WoodSettings(
                weight.boardFeet(),
                logs.tapers(),
                logs.settings(),
                logs.prices(),
                weight.biomass(),
                weight.greenWeight(),
                weight.carbon());
        WoodChecks.check(root, wood, species, units);
        return wood;
    }
}
