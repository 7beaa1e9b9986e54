package quadmean.field;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** Reads ranges of an estate's tally, one after the other. One reader serves one thread. */
public final class RangeReader {
    private final Design design;
    private final EstateSink sink;
    private final TreeReader trees;
    private final int room;
    private @Nullable Header header;
    private @Nullable TreeMemo memo;

    /**
     * A reader that hands everything to a sink.
     *
     * @param room most readings to know again by their text
     */
    public RangeReader(Design design, EstateSink sink, int room) {
        this.design = design;
        this.sink = sink;
        this.trees = new TreeReader(design);
        this.room = room;
    }

    /** Reads the rows of a range. */
    public EstateRows read(EstateRange range) {
        Header ofFile = range.file().header();
        PlotRows rows = new PlotRows(design, ofFile, sink, trees, memo(ofFile), range.firstLine() - 1);
        List<Problem> ofFileItself = new ArrayList<>();
        boolean isWhole = parse(range, rows, p -> ofFileItself.add(p));
        EstateRows read = rows.finish();
        if (isWhole && rows.hasQuotes() && isQuoteOpen(range)) {
            ofFileItself.add(unreadable(range, "a quote opened in the last row is never closed"));
        }
        if (ofFileItself.isEmpty()) {
            return read;
        }
        ofFileItself.addAll(0, read.problems());
        return new EstateRows(read.used(), read.dropped(), read.kept(), ofFileItself);
    }

    /** What reads alike in one file need not do so in another with other columns. */
    private TreeMemo memo(Header ofFile) {
        TreeMemo known = memo;
        if (known == null || !ofFile.equals(header)) {
            known = new TreeMemo(PlotRows.readings(ofFile), room);
            memo = known;
            header = ofFile;
        }
        return known;
    }

    private boolean parse(EstateRange range, PlotRows rows, Consumer<Problem> problems) {
        try (Reader reader = new InputStreamReader(
                        new ByteArrayInputStream(range.bytes(), 0, range.length()),
                        range.file().charset().newDecoder());
                CsvReader<Object> csv = CsvReader.builder()
                        .fieldSeparator(ofFile(range).file().separator())
                        .detectBomHeader(false)
                        .allowExtraFields(true)
                        .allowMissingFields(true)
                        .build(rows, reader)) {
            csv.forEach(row -> {});
            return true;
        } catch (CsvParseException e) {
            problems.accept(unreadable(range, "the rows are no CSV that can be read: " + e.getMessage()));
        } catch (UncheckedIOException e) {
            problems.accept(
                    unreadable(range, why(range, Objects.requireNonNullElse(e.getCause(), new IOException(e)))));
        } catch (IOException e) {
            problems.accept(unreadable(range, why(range, e)));
        }
        return false;
    }

    private static String why(EstateRange range, IOException e) {
        return e instanceof CharacterCodingException
                ? EstateFiles.notIn(range.file().charset())
                : String.valueOf(e.getMessage());
    }

    private static Header ofFile(EstateRange range) {
        return range.file().header();
    }

    private Problem unreadable(EstateRange range, String detail) {
        String lines = " (lines " + range.firstLine() + " to " + (range.after().line() - 1) + ")";
        return new Problem(
                range.file().name(),
                range.firstLine(),
                "",
                "",
                Rule.FILE_UNREADABLE,
                design.policy(Rule.FILE_UNREADABLE),
                detail + lines);
    }

    /** Whether the quotes of the last line do not pair. */
    private static boolean isQuoteOpen(EstateRange range) {
        byte[] bytes = range.bytes();
        int at = range.length() - 1;
        while (at >= 0 && (bytes[at] == '\n' || bytes[at] == '\r')) {
            at--;
        }
        boolean isOpen = false;
        for (; at >= 0 && bytes[at] != '\n' && bytes[at] != '\r'; at--) {
            isOpen ^= bytes[at] == '"';
        }
        return isOpen;
    }
}
