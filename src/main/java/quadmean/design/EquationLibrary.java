package quadmean.design;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;
import quadmean.model.EquationSpec;
import quadmean.model.Problem;

/** The published equations that travel with the program, each with its source and whether anybody checked it. */
public final class EquationLibrary {
    private static final String FILE = "equations.toml";
    private static final int MOST_NEAR = 3;

    private final List<Entry> entries;

    private EquationLibrary(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /**
     * An equation of the library.
     *
     * @param name the name by which designs call it
     * @param species species or group, in words
     * @param region where it was made for
     * @param gives what it gives, such as {@code total stem inside bark}
     * @param equation the equation
     */
    public record Entry(String name, String species, String region, String gives, EquationSpec equation) {
        /** Whether every word stands somewhere in what is said of the equation, in any case. */
        boolean has(String words) {
            String all = String.join(
                            " ",
                            name,
                            species,
                            region,
                            gives,
                            equation.provenance().source(),
                            equation.provenance().standing().label())
                    .toLowerCase(Locale.ROOT);
            return Arrays.stream(words.toLowerCase(Locale.ROOT).strip().split("\\s+"))
                    .allMatch(all::contains);
        }
    }

    /** Read once, when first needed. */
    private static final class Shipped {
        static final EquationLibrary LIBRARY = read();
    }

    /** The library that travels with the program. */
    public static EquationLibrary shipped() {
        return Shipped.LIBRARY;
    }

    /** All equations, in the order of the file. */
    public List<Entry> entries() {
        return entries;
    }

    /** The equation of this name, if there is one. */
    public Optional<Entry> find(String name) {
        return entries.stream().filter(e -> e.name().equals(name)).findFirst();
    }

    /** The equations of which every word of the text is said; all of them for an empty text. */
    public List<Entry> search(String text) {
        return entries.stream().filter(e -> e.has(text)).toList();
    }

    /** Up to three names of a kind that have most in common with a name that does not exist. */
    public List<String> near(String name, Class<? extends EquationSpec> kind) {
        List<String> names = entries.stream()
                .filter(e -> kind.isInstance(e.equation()))
                .map(Entry::name)
                .toList();
        List<String> near = new ArrayList<>(Nearest.to(name, names).stream().toList());
        names.stream()
                .filter(n -> common(n, name) > 0 && !near.contains(n))
                .sorted(Comparator.comparingInt(n -> -common(n, name)))
                .limit(MOST_NEAR - near.size())
                .forEach(near::add);
        return near;
    }

    /** Number of words that two names share. */
    private static int common(String a, String b) {
        List<String> words = Arrays.asList(a.toLowerCase(Locale.ROOT).split("[/ _-]+"));
        return (int) Arrays.stream(b.toLowerCase(Locale.ROOT).split("[/ _-]+"))
                .filter(words::contains)
                .count();
    }

    private static EquationLibrary read() {
        try (InputStream in = EquationLibrary.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the library of equations is not in the program");
            }
            return of(Toml.parse(in), FILE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A library of its text; a problem in it is a defect of the program. */
    static EquationLibrary of(TomlParseResult toml, String file) {
        if (toml.hasErrors()) {
            throw new IllegalStateException(file + ": " + toml.errors());
        }
        ProblemLog log = new ProblemLog(file);
        List<Entry> entries = LibraryParser.parse(Section.root(toml, log));
        if (!log.problems().isEmpty()) {
            throw new IllegalStateException(
                    log.problems().stream().map(Problem::detail).toList().toString());
        }
        return new EquationLibrary(entries);
    }
}
