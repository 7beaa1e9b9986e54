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
import quadmean.model.Boundary;
import quadmean.model.Problem;
import quadmean.model.Rule;

/**
 * Reads ranges of an estate's tally, one after the other. One reader serves one thread.
 */
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
        // rows that must agree with others of their plot are read one by one
        this.room = design.plotRules().boundary() == Boundary.INWARD_SWEEP ? 0 : room;
    }

    /** Reads the rows of a range. A row whose quotes do not fit is broken; the one on the next line is not. */
    public EstateRows read(EstateRange range) {
        Header ofFile = range.file().header();
        PlotRows rows = new PlotRows(design, ofFile, sink, trees, memo(ofFile));
        List<Problem> ofFileItself = new ArrayList<>();
        RangeLines lines = new RangeLines(range);
        boolean goesOn = true;
        while (goesOn) {
            goesOn = parse(range, lines, rows, ofFileItself::add) && lines.toLine(rows.line());
            if (goesOn) {
                rows.broken(lines.line());
                goesOn = lines.toLine(rows.line() + 1);
            }
        }
        EstateRows read = rows.finish();
        if (ofFileItself.isEmpty()) {
            return read;
        }
        ofFileItself.addAll(0, read.problems());
        return new EstateRows(read.used(), read.dropped(), read.kept(), ofFileItself);
    }

    /** What reads alike in one file need not do so in another with other columns. */
    private TreeMemo memo(Header ofFile) {
        TreeMemo known = memo;
        if (known == null || header == null || !isAlike(ofFile, header)) {
            known = new TreeMemo(PlotRows.readings(ofFile), room);
            memo = known;
            header = ofFile;
        }
        return known;
    }

    /** Whether the same text means the same in two files. */
    private static boolean isAlike(Header one, Header other) {
        return one.position().equals(other.position())
                && one.file().columns().equals(other.file().columns())
                && one.file().decimal() == other.file().decimal();
    }

    /** Whether the reading stopped at a row whose quotes do not fit. */
    private boolean parse(EstateRange range, RangeLines lines, PlotRows rows, Consumer<Problem> problems) {
        rows.from(lines.number() - 1);
        char separator = range.file().header().file().separator();
        try (Reader reader = new InputStreamReader(
                        new ByteArrayInputStream(range.bytes(), lines.at(), range.length() - lines.at()),
                        range.file().charset().newDecoder());
                CsvReader<Object> csv = CsvReader.builder()
                        .fieldSeparator(separator)
                        .detectBomHeader(false)
                        .allowExtraFields(true)
                        .allowMissingFields(true)
                        .build(rows, reader)) {
            if (csv.iterator().hasNext()) {
                return true;
            }
            if (rows.hasQuotes() && lines.toLine(rows.line()) && QuoteWatch.isOpenAfter(lines.line(), separator)) {
                problems.accept(unreadable(range, rows.line(), "a quote opened in the last row is never closed"));
            }
        } catch (CsvParseException e) {
            if (e.getCause() instanceof CsvParseException) {
                return true;
            }
            throw defect(e);
        } catch (UncheckedIOException e) {
            problems.accept(unreadable(range, Objects.requireNonNullElse(e.getCause(), new IOException(e))));
        } catch (IOException e) {
            problems.accept(unreadable(range, e));
        }
        return false;
    }

    /** What the library wraps that it did not throw itself. */
    private static RuntimeException defect(CsvParseException e) {
        if (e.getCause() instanceof Error error) {
            throw error;
        }
        return e.getCause() instanceof RuntimeException cause ? cause : e;
    }

    private Problem unreadable(EstateRange range, IOException e) {
        if (!(e instanceof CharacterCodingException)) {
            return unreadable(range, range.firstLine(), String.valueOf(e.getMessage()));
        }
        RangeLines lines = new RangeLines(range);
        while (lines.isText() && lines.toLine(lines.number() + 1)) {
            // on to the line that is none
        }
        return unreadable(range, lines.number(), EstateFiles.notIn(range.file().charset()));
    }

    private Problem unreadable(EstateRange range, long line, String detail) {
        return new Problem(
                range.file().name(), line, "", "", Rule.FILE_UNREADABLE, design.policy(Rule.FILE_UNREADABLE), detail);
    }
}
