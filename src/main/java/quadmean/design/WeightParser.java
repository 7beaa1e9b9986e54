package quadmean.design;

import java.util.Map;
import java.util.Optional;
import quadmean.model.BiomassSpec;
import quadmean.model.CarbonFraction;
import quadmean.model.GreenWeight;
import quadmean.model.Provenance;
import quadmean.model.Rule;
import quadmean.model.Standing;
import quadmean.model.VolumeSpec;
import quadmean.units.Quantity;
import quadmean.units.Unit;

/** Reads {@code [board_feet.CODE]}, {@code [biomass.CODE]}, {@code [green_weight.CODE]} and {@code [carbon]}. */
final class WeightParser {
    /** Half of dry wood is carbon, as the trade has it. */
    private static final CarbonFraction USUAL_CARBON =
            new CarbonFraction(0.5, new Provenance("common practice, no source", Standing.FROM_MEMORY));

    /** Bounds of green weight (kg/m³) wide enough for any tree: common practice, no source. */
    private static final double LIGHTEST = 200;

    private static final double HEAVIEST = 2000;

    private final Section root;
    private final Map<String, SpeciesEntry> species;

    WeightParser(Section root, Map<String, SpeciesEntry> species) {
        this.root = root;
        this.species = species;
    }

    Map<String, VolumeSpec> boardFeet() {
        return VolumeParser.parse(root, species, VolumeKind.BOARD_FEET);
    }

    Map<String, BiomassSpec> biomass() {
        return CodeTables.read(root, "biomass", species, BiomassParser::read);
    }

    Map<String, GreenWeight> greenWeight() {
        return CodeTables.read(root, "green_weight", species, WeightParser::green);
    }

    private static GreenWeight green(String code, Section s) {
        Stated stated = Stated.alone(s);
        double factor = s.requiredNumber("factor", Range.POSITIVE);
        Unit unit = stated.unit("unit", Quantity.DENSITY);
        double kgPerM3 = unit.convert(factor, Unit.KILOGRAMS_PER_CUBIC_METRE);
        boolean stands = s.number("factor", Range.POSITIVE).isPresent()
                && s.text("unit").filter(unit.symbol()::equals).isPresent();
        if (stands && !(kgPerM3 >= LIGHTEST && kgPerM3 <= HEAVIEST)) {
            s.problem(
                    Rule.DESIGN_VALUE,
                    "factor",
                    Section.show(factor),
                    "green wood weighs from " + Section.show(LIGHTEST) + " to " + Section.show(HEAVIEST)
                            + " kg/m3, and this would be " + Section.show(Math.rint(kgPerM3))
                            + " kg/m3; check factor and unit");
        }
        return new GreenWeight(code, kgPerM3, stated.provenance());
    }

    /** What the design states; else, with biomass to apply it to, the usual half. */
    Optional<CarbonFraction> carbon() {
        boolean biomass = !root.table("biomass").keys().isEmpty();
        if (!root.has("carbon")) {
            return biomass ? Optional.of(USUAL_CARBON) : Optional.empty();
        }
        Section s = root.table("carbon");
        double fraction = s.requiredNumber("fraction", Range.SHARE);
        Provenance provenance = Stated.alone(s).provenance();
        if (!biomass) {
            s.problem(
                    Rule.DESIGN_MISSING,
                    "fraction",
                    "",
                    "[carbon] is a share of dry biomass: add a [biomass.CODE] table, or take it out");
        }
        s.close();
        return Optional.of(new CarbonFraction(fraction, provenance));
    }
}
