package quadmean.cruise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import quadmean.design.Nearest;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.Worksheet;
import quadmean.model.Stratum;
import quadmean.units.Attribute;

/**
 * Which number is to be explained.
 *
 * @param subject of what
 * @param id number of the plot, or label of the tree; empty for totals
 * @param stratum stratum code; {@code *} for all
 * @param species species code; {@code *} for all
 * @param attribute the attribute
 */
public record ExplainRequest(Subject subject, String id, String stratum, String species, Attribute attribute) {
    /** How requests are written. */
    public static final String FORMS =
            "plot:NUMBER, tree:PLOT-TREE or total, each with :ATTRIBUTE and :SPECIES where wanted,"
                    + " and :STRATUM after total";

    /** What a number may be of. */
    public enum Subject {
        PLOT,
        TREE,
        TOTAL;

        /** The word used in requests. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Reads a request such as {@code plot:17:PSME} or {@code total:board_feet}.
     *
     * @param result the cruise that it is about
     * @param sheet its worksheet
     * @throws IllegalArgumentException if it asks for what is not there; the message names what is, and the nearest
     */
    public static ExplainRequest parse(String text, CruiseResult result, Worksheet sheet) {
        List<String> words = new ArrayList<>(Arrays.asList(text.strip().split(":", -1)));
        String kind = words.remove(0).strip();
        Subject subject = Arrays.stream(Subject.values())
                .filter(s -> s.id().equals(kind))
                .findFirst()
                .orElseThrow(() -> unknown(
                        kind, "nothing that can be explained; ask for " + FORMS, List.of("plot", "tree", "total")));
        String id = subject == Subject.TOTAL ? "" : id(subject, words, result, sheet);
        ExplainRequest request = new ExplainRequest(
                subject, id, EstimateRow.ALL, EstimateRow.ALL, result.design().targetAttribute());
        List<String> said = new ArrayList<>();
        for (String word : words) {
            request = request.with(word.strip(), said, sheet);
        }
        return request.checked();
    }

    private static String id(Subject subject, List<String> words, CruiseResult result, Worksheet sheet) {
        String id = words.isEmpty() ? "" : words.remove(0).strip();
        List<String> known = subject == Subject.PLOT
                ? sheet.plots().stream().map(SampledPlot::id).toList()
                : result.trees().stream().map(t -> t.tree().label()).toList();
        if (!known.contains(id)) {
            throw unknown(
                    id,
                    "no " + subject.id() + " that the estimate uses; write " + subject.id() + ":"
                            + (subject == Subject.PLOT ? "NUMBER" : "PLOT-TREE"),
                    known);
        }
        return id;
    }

    private ExplainRequest with(String word, List<String> said, Worksheet sheet) {
        Optional<Attribute> named =
                attributes(sheet).filter(a -> a.id().equals(word)).findFirst();
        List<String> codes = strata(sheet);
        boolean isSpecies = species(sheet).contains(word);
        String what = named.isPresent() ? "attribute" : isSpecies ? "species" : "stratum";
        if (named.isEmpty() && !isSpecies && !codes.contains(word)) {
            List<String> all =
                    new ArrayList<>(attributes(sheet).map(Attribute::id).toList());
            all.addAll(species(sheet));
            all.addAll(codes);
            throw unknown(
                    word,
                    "no attribute" + (codes.isEmpty() ? "" : ", stratum") + " or species here; there are "
                            + String.join(", ", all),
                    all);
        }
        if (said.contains(what)) {
            throw new IllegalArgumentException("'" + word + "' is a second " + what + "; one number has one");
        }
        said.add(what);
        return switch (what) {
            case "attribute" -> new ExplainRequest(subject, id, stratum, species, named.orElseThrow());
            case "species" -> new ExplainRequest(subject, id, stratum, word, attribute);
            default -> new ExplainRequest(subject, id, word, species, attribute);
        };
    }

    private ExplainRequest checked() {
        if (attribute == Attribute.QUADRATIC_MEAN_DIAMETER && subject != Subject.TOTAL) {
            throw new IllegalArgumentException(
                    "the quadratic mean diameter is a ratio of sums over plots; ask for total:" + attribute.id()
                            + ", or for trees and basal_area of the " + subject.id());
        }
        return this;
    }

    private static Stream<Attribute> attributes(Worksheet sheet) {
        return Stream.concat(sheet.settings().attributes().stream(), Stream.of(Attribute.QUADRATIC_MEAN_DIAMETER));
    }

    private static List<String> species(Worksheet sheet) {
        return sheet.plots().stream()
                .flatMap(p -> p.stems().stream())
                .map(s -> s.species())
                .distinct()
                .sorted()
                .toList();
    }

    /** Strata may be asked for where there are several, and of totals only. */
    private List<String> strata(Worksheet sheet) {
        return subject == Subject.TOTAL && sheet.strata().size() > 1
                ? sheet.strata().stream().map(Stratum::code).toList()
                : List.of();
    }

    private static IllegalArgumentException unknown(String word, String what, List<String> known) {
        String hint =
                Nearest.to(word, known).map(n -> "; did you mean " + n + "?").orElse("");
        return new IllegalArgumentException("'" + word + "' is " + what + hint);
    }
}
