package quadmean.design;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The {@code [tract]} table: where the boundary is and how to read it.
 *
 * @param boundary the file
 * @param name what messages call it
 * @param format how it is written
 * @param system what its coordinates mean
 * @param stratumProperty the property that holds the stratum, if the design names one
 * @param outline the code of the polygon that bounds the whole tract
 */
public record TractSettings(
        Path boundary,
        String name,
        TractFormat format,
        MapSystem system,
        Optional<String> stratumProperty,
        String outline) {}
