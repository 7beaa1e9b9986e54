package quadmean.model;

/**
 * Where a number comes from and how far it can be trusted.
 *
 * @param source the source as it is printed beside the number; never blank
 * @param standing whether anybody checked the number against it
 */
public record Provenance(String source, Standing standing) {
    public Provenance {
        if (source.isBlank()) {
            throw new IllegalArgumentException("a source must not be blank");
        }
    }
}
