package quadmean.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseRun;
import quadmean.design.DesignReader;

/** Cruises of shipped designs, each worked through once for all tests that only look at what came of it. */
public final class ShippedCruises {
    private static final Map<String, CruiseRun> RUNS = new ConcurrentHashMap<>();

    private ShippedCruises() {}

    /** What comes of a design of the folder {@code designs}, named without its ending. */
    public static CruiseRun run(String name) {
        return RUNS.computeIfAbsent(name, ShippedCruises::first);
    }

    private static CruiseRun first(String name) {
        try {
            return Cruise.run(Objects.requireNonNull(
                    DesignReader.read(Path.of("designs", name + ".toml")).design()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
