package quadmean.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quadmean.estimate.EstimateRow;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/**
 * What an {@code estimate.json} of an earlier cruise says of the variation between plots.
 *
 * @param name name of that cruise
 * @param rows its estimates per area, of all species together
 * @param trouble why the file is of no use, and what to do; empty if it is
 */
public record PreviousCruise(String name, List<Row> rows, String trouble) {
    /** An estimate of everything else than trees is larger than this only by mistake. */
    private static final long LARGEST_BYTES = 200_000_000;

    public PreviousCruise {
        rows = List.copyOf(rows);
    }

    /**
     * One estimate.
     *
     * @param stratum stratum code, {@code *} for the whole stand
     * @param attribute id of the attribute
     * @param plots plots behind it
     * @param mean mean per hectare
     * @param cvPercent coefficient of variation between plots (percent); NaN if unknown
     */
    public record Row(String stratum, String attribute, int plots, double mean, double cvPercent) {}

    /**
     * Reads the file.
     *
     * @throws IOException if it cannot be read
     */
    public static PreviousCruise read(Path file) throws IOException {
        String what = file.getFileName() + " is no estimate.json of an estimated cruise";
        if (Files.size(file) > LARGEST_BYTES) {
            return useless(what + ": it is larger than 200 MB");
        }
        JsonNode root;
        try {
            root = new ObjectMapper().readTree(Files.readAllBytes(file));
        } catch (JsonProcessingException e) {
            return useless(what + ": it is not JSON");
        }
        if (root == null
                || !root.path("estimates").isArray()
                || !root.path("schemaVersion").isInt()) {
            return useless(what + ": it has no estimates; name the file that quadmean estimate wrote");
        }
        List<Row> rows = new ArrayList<>();
        for (JsonNode r : root.get("estimates")) {
            if (r.path("species").asText().equals(EstimateRow.ALL)
                    && r.path("product").asText().equals(EstimateRow.ALL)
                    && r.path("log").asText().equals(EstimateRow.ALL)
                    && r.path("basis").asText().equals(Basis.PER_AREA.id())) {
                rows.add(new Row(
                        r.path("stratum").asText(),
                        r.path("attribute").asText(),
                        r.path("n").asInt(),
                        r.path("mean").asDouble(Double.NaN),
                        r.path("cvPercent").asDouble(Double.NaN)));
            }
        }
        return new PreviousCruise(
                root.path("design").path("name").asText(file.getFileName().toString()), rows, "");
    }

    private static PreviousCruise useless(String why) {
        return new PreviousCruise("", List.of(), why);
    }

    /** The estimate of an attribute in a stratum. */
    public Optional<Row> row(String stratum, Attribute attribute) {
        return rows.stream()
                .filter(r -> r.stratum().equals(stratum) && r.attribute().equals(attribute.id()))
                .findFirst();
    }
}
