package quadmean.report;

import java.util.List;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.ClassRow;
import quadmean.estimate.EstimateRow;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Trees per unit area by diameter class and species, classes with trees only; the stand table has all classes and totals. */
final class DiametersCsv {
    private static final List<String> HEADER = List.of(
            "lower_cm",
            "upper_cm",
            "lower_in",
            "upper_in",
            "species",
            "trees_per_ha",
            "trees_per_ac",
            "se_per_ha",
            "se_per_ac");

    private DiametersCsv() {}

    static Content of(CruiseResult result) {
        return Csv.of(HEADER, bySpecies(result).stream().map(DiametersCsv::row));
    }

    /** Trees per unit area of each species in the classes where it has any. */
    static List<ClassRow> bySpecies(CruiseResult result) {
        return result.estimate().structure().rows(Attribute.TREES, Basis.PER_AREA).stream()
                .filter(c ->
                        !c.row().species().equals(EstimateRow.ALL) && c.row().mean() > 0)
                .toList();
    }

    private static List<String> row(ClassRow c) {
        EstimateRow row = c.row();
        return List.of(
                Csv.number(c.size().lowerCm()),
                Csv.number(c.size().upperCm()),
                Csv.number(Unit.CENTIMETRE.convert(c.size().lowerCm(), Unit.INCH)),
                Csv.number(Unit.CENTIMETRE.convert(c.size().upperCm(), Unit.INCH)),
                row.species(),
                Csv.number(row.mean()),
                Csv.number(row.in(UnitSystem.US, row.mean())),
                Csv.number(row.se()),
                Csv.number(row.in(UnitSystem.US, row.se())));
    }
}
