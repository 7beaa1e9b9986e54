package quadmean.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import quadmean.stats.LeastSquaresFit;

/** Numbers that may be unknown. */
final class JsonNumbers {
    private static final String NAMES = "abc";

    private JsonNumbers() {}

    /** A number; null where it is NaN or infinite, which JSON cannot say. */
    static void put(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, value);
        } else {
            node.putNull(key);
        }
    }

    static void put(ObjectNode node, String key, OptionalInt value) {
        if (value.isPresent()) {
            node.put(key, value.getAsInt());
        } else {
            node.putNull(key);
        }
    }

    /** A text, left out where it is empty. */
    static void putText(ObjectNode node, String key, String text) {
        if (!text.isEmpty()) {
            node.put(key, text);
        }
    }

    /** The evidence of a fit: parameters by name, standard errors, measures of fit; null without an optimum. */
    static void putFit(ObjectNode node, @Nullable LeastSquaresFit fit) {
        if (fit == null) {
            node.putNull("parameters");
            return;
        }
        putParameters(node.putObject("parameters"), fit.parameters());
        ObjectNode errors = node.putObject("standardErrors");
        for (int i = 0; i < fit.parameters().length; i++) {
            put(errors, NAMES.substring(i, i + 1), fit.hasFullRank() ? fit.standardError(i) : Double.NaN);
        }
        put(node, "rss", fit.rss());
        put(node, "sigma", fit.sigma());
        put(node, "relativeOffset", fit.relativeOffset());
        put(node, "conditionNumber", fit.conditionNumber());
        node.put("n", fit.n());
    }

    static void putParameters(ObjectNode node, double[] parameters) {
        for (int i = 0; i < parameters.length; i++) {
            put(node, NAMES.substring(i, i + 1), parameters[i]);
        }
    }
}
