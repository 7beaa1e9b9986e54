package quadmean.model;

/**
 * A height taken in the field.
 *
 * @param metres total height (m)
 * @param source {@link HeightSource#MEASURED} or {@link HeightSource#READING}
 * @param column the tally column it came from
 * @param text what the tally says there
 */
public record FieldHeight(double metres, HeightSource source, String column, String text) {}
