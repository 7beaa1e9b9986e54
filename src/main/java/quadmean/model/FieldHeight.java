package quadmean.model;

import java.util.List;

/**
 * A height taken in the field.
 *
 * @param metres total height (m)
 * @param source {@link HeightSource#MEASURED} or {@link HeightSource#READING}
 * @param column the tally column it came from
 * @param text what the tally says there
 * @param sdM its standard error (m), from the errors of the readings; NaN if it is not known
 * @param remarks what the crew should know of it, in sentences
 * @param working how it follows from its readings, as a formula with numbers in metres; empty where it was measured
 */
public record FieldHeight(
        double metres,
        HeightSource source,
        String column,
        String text,
        double sdM,
        List<String> remarks,
        String working) {
    public FieldHeight {
        remarks = List.copyOf(remarks);
    }

    /** A height of which it is not kept how it follows from readings. */
    public FieldHeight(
            double metres, HeightSource source, String column, String text, double sdM, List<String> remarks) {
        this(metres, source, column, text, sdM, remarks, "");
    }

    /** A height of which no error is known and nothing remarked. */
    public FieldHeight(double metres, HeightSource source, String column, String text) {
        this(metres, source, column, text, Double.NaN, List.of());
    }
}
