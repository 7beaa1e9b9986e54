package quadmean.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quadmean.model.ValidRange;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeTable;
import quadmean.units.Unit;

/** The part of {@code estimate.json} about volume equations. */
final class JsonEquations {
    private JsonEquations() {}

    static ArrayNode of(Map<String, VolumeSpec> equations) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        new TreeMap<>(equations).forEach((species, spec) -> put(list.addObject(), species, spec));
        return list;
    }

    static void put(ObjectNode node, String species, VolumeSpec spec) {
        node.put("species", species);
        node.put("statedFor", spec.code());
        node.put("form", spec.form().id());
        node.put("formula", spec.form().formula());
        ObjectNode coefficients = node.putObject("coefficients");
        for (int i = 0; i < spec.coefficients().size(); i++) {
            coefficients.put(
                    spec.form().coefficients().get(i), spec.coefficients().get(i));
        }
        spec.table().ifPresent(t -> putTable(node, t));
        node.put("logBase", spec.logBase() == VolumeSpec.LogBase.TEN ? "10" : "e");
        node.put("residualSd", spec.residualSd());
        node.put("dbhUnit", spec.dbhUnit().symbol());
        if (spec.needsHeight()) {
            node.put("heightUnit", spec.heightUnit().symbol());
        }
        node.put("volumeUnit", spec.volumeUnit().symbol());
        putRange(node, spec.range());
        JsonNumbers.putText(node, "library", spec.library());
        node.put("source", spec.source());
        node.put("formSource", spec.form().source());
        node.put("standing", spec.standing().label());
    }

    private static void putTable(ObjectNode equation, VolumeTable table) {
        ObjectNode node = equation.putObject("table");
        putAll(node.putArray("dbh"), table.dbh());
        putAll(node.putArray(table.entry().id()), table.columns());
        ArrayNode rows = node.putArray("volumes");
        table.volumes().forEach(row -> putAll(rows.addArray(), row));
    }

    private static void putAll(ArrayNode list, List<Double> values) {
        values.forEach(list::add);
    }

    /** Limits of the trees that an equation was fitted to, as far as they are stated. */
    static void putRange(ObjectNode node, ValidRange range) {
        putStated(node, "minDbhCm", range.minDbhCm());
        putStated(node, "maxDbhCm", range.maxDbhCm());
        putStated(node, "minDbhIn", Unit.CENTIMETRE.convert(range.minDbhCm(), Unit.INCH));
        putStated(node, "maxDbhIn", Unit.CENTIMETRE.convert(range.maxDbhCm(), Unit.INCH));
        putStated(node, "minHeightM", range.minHeightM());
        putStated(node, "maxHeightM", range.maxHeightM());
        putStated(node, "minHeightFt", Unit.METRE.convert(range.minHeightM(), Unit.FOOT));
        putStated(node, "maxHeightFt", Unit.METRE.convert(range.maxHeightM(), Unit.FOOT));
    }

    private static void putStated(ObjectNode node, String key, double value) {
        if (!Double.isNaN(value)) {
            node.put(key, value);
        }
    }
}
