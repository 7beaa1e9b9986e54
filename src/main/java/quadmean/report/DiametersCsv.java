package quadmean.report;

import java.util.List;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.DiameterClass;
import quadmean.units.Unit;

/** Trees by diameter class and species. */
final class DiametersCsv {
    private static final List<String> HEADER =
            List.of("lower_cm", "upper_cm", "lower_in", "upper_in", "species", "trees_per_ha", "trees_per_ac");

    private DiametersCsv() {}

    static Content of(CruiseResult result) {
        return Csv.of(HEADER, result.estimate().diameters().stream().map(DiametersCsv::row));
    }

    private static List<String> row(DiameterClass c) {
        return List.of(
                Csv.number(c.lowerCm()),
                Csv.number(c.upperCm()),
                Csv.number(Unit.CENTIMETRE.convert(c.lowerCm(), Unit.INCH)),
                Csv.number(Unit.CENTIMETRE.convert(c.upperCm(), Unit.INCH)),
                c.species(),
                Csv.number(c.treesPerHa()),
                Csv.number(Unit.TREES_PER_HECTARE.convert(c.treesPerHa(), Unit.TREES_PER_ACRE)));
    }
}
