package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.ClassRow;
import quadmean.estimate.DiameterClass;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.StandStatistic;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** The part of {@code estimate.json} about the stand by size and as a whole. */
final class JsonStructure {
    private JsonStructure() {}

    /** Trees by class and species, classes with trees only. */
    static ArrayNode diameters(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (ClassRow c : DiametersCsv.bySpecies(result)) {
            ObjectNode node = list.addObject();
            limits(node, c.size());
            node.put("species", c.row().species());
            JsonNumbers.put(node, "treesPerHa", c.row().mean());
            JsonNumbers.put(
                    node, "treesPerAc", c.row().in(UnitSystem.US, c.row().mean()));
            JsonNumbers.put(node, "sePerHa", c.row().se());
            JsonNumbers.put(node, "sePerAc", c.row().in(UnitSystem.US, c.row().se()));
        }
        return list;
    }

    /** Stand and stock table; species {@code *} is all of them. */
    static ArrayNode classes(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (ClassRow c : result.estimate().structure().classes()) {
            for (UnitSystem system : UnitSystem.values()) {
                ObjectNode node = list.addObject();
                limits(node, c.size());
                numbers(node, result, c.row(), system);
            }
        }
        return list;
    }

    private static void limits(ObjectNode node, DiameterClass size) {
        node.put("lowerCm", size.lowerCm());
        node.put("upperCm", size.upperCm());
        node.put("lowerIn", Unit.CENTIMETRE.convert(size.lowerCm(), Unit.INCH));
        node.put("upperIn", Unit.CENTIMETRE.convert(size.upperCm(), Unit.INCH));
    }

    private static void numbers(ObjectNode node, CruiseResult result, EstimateRow row, UnitSystem system) {
        node.put("species", row.species());
        node.put("attribute", row.attribute().id());
        node.put("basis", row.basis().id());
        node.put("unit", row.unit(system).symbol());
        node.put("n", row.n());
        JsonNumbers.put(node, "df", row.df());
        JsonNumbers.put(node, "mean", row.in(system, row.mean()));
        JsonNumbers.put(node, "se", row.in(system, row.se()));
        JsonNumbers.put(node, "lower", row.in(system, row.lower()));
        JsonNumbers.put(node, "upper", row.in(system, row.upper()));
        JsonNumbers.put(node, "samplingErrorPercent", row.samplingErrorPercent());
        JsonNumbers.putText(node, "equationStanding", Facts.standing(result, row));
        JsonNumbers.putText(node, "reason", row.reason());
    }

    /** Stand statistics. */
    static ArrayNode statistics(CruiseResult result) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (StandStatistic s : result.estimate().structure().statistics()) {
            for (UnitSystem system : UnitSystem.values()) {
                ObjectNode node = list.addObject();
                node.put("stratum", s.stratum());
                node.put("statistic", s.statistic().id());
                node.put("name", s.statistic().label());
                node.put("unit", s.statistic().unit(system).symbol());
                node.put("n", s.n());
                JsonNumbers.put(node, "df", s.df());
                JsonNumbers.put(node, "value", s.in(system, s.value()));
                JsonNumbers.put(node, "se", s.in(system, s.se()));
                JsonNumbers.put(node, "lower", s.in(system, s.lower()));
                JsonNumbers.put(node, "upper", s.in(system, s.upper()));
                JsonNumbers.put(node, "samplingErrorPercent", s.samplingErrorPercent());
                node.put("rule", s.rule());
                node.put("source", s.statistic().source());
                JsonNumbers.putText(node, "equationStanding", Facts.standing(result, s));
                JsonNumbers.putText(node, "reason", s.reason());
            }
        }
        return list;
    }
}
