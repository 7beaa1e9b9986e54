package quadmean.field;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.zip.ZipException;
import quadmean.design.Design;
import quadmean.design.Encoding;
import quadmean.design.TallyFile;
import quadmean.model.Problem;

/** Finds the tally files of an estate, CSV or gzipped CSV, alone or all of a folder, and matches their headers. */
public final class EstateFiles {
    private static final int SAMPLE = 1 << 18;
    private static final int LONGEST_HEADER = 1 << 16;

    private EstateFiles() {}

    /**
     * All files in the order of the design, those of a folder in the order of their names.
     *
     * @param problems takes what is wrong with files and headers
     * @throws IOException if a file is missing or cannot be read
     */
    public static List<EstateFile> open(Design design, Consumer<Problem> problems) throws IOException {
        List<EstateFile> files = new ArrayList<>();
        for (TallyFile declared : design.tallies()) {
            for (TallyFile file : inside(declared)) {
                FileProblems log = new FileProblems(design::policy, file.name(), problems);
                open(file, log).ifPresent(files::add);
            }
            if (Files.isDirectory(declared.path()) && inside(declared).isEmpty()) {
                new FileProblems(design::policy, declared.name(), problems)
                        .unreadable("the folder holds no .csv and no .csv.gz");
            }
        }
        return files;
    }

    /** Paths of all tally files, whether they can be read or not. */
    public static List<Path> paths(Design design) throws IOException {
        List<Path> paths = new ArrayList<>();
        for (TallyFile declared : design.tallies()) {
            inside(declared).forEach(f -> paths.add(f.path()));
        }
        return paths;
    }

    private static List<TallyFile> inside(TallyFile declared) throws IOException {
        if (!Files.isDirectory(declared.path())) {
            return List.of(declared);
        }
        try (Stream<Path> entries = Files.list(declared.path())) {
            return entries.filter(
                            p -> (name(p).endsWith(".csv") || name(p).endsWith(".csv.gz")) && !Files.isDirectory(p))
                    .sorted()
                    .map(p -> new TallyFile(
                            p, declared.name() + "/" + p.getFileName(), declared.format(), declared.columns()))
                    .toList();
        }
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
    }

    private static Optional<EstateFile> open(TallyFile file, FileProblems log) throws IOException {
        if (name(file.path()).endsWith(".xlsx")) {
            log.unreadable("the tally of an estate is CSV, or CSV packed by gzip; save the workbook as CSV");
            return Optional.empty();
        }
        Encoding encoding = file.format().encoding() == null
                ? Encoding.UTF_8
                : file.format().encoding();
        if (encoding == Encoding.UTF_16) {
            log.unreadable("the tally of an estate is in utf-8 or windows-1252; save it again in one of them");
            return Optional.empty();
        }
        try (InputStream in = new BufferedInputStream(EstateFile.open(file.path()), SAMPLE)) {
            return settled(file, in, encoding.charset(), log);
        } catch (CharacterCodingException e) {
            log.unreadable("the file is not text in " + encoding.id() + "; name its encoding under [[tally]]");
        } catch (ZipException e) {
            log.unreadable("the file is not packed by gzip, whatever its name says");
        } catch (EOFException e) {
            log.unreadable("what gzip packed breaks off; pack the file again");
        }
        return Optional.empty();
    }

    private static Optional<EstateFile> settled(TallyFile file, InputStream in, Charset charset, FileProblems log)
            throws IOException {
        in.mark(SAMPLE);
        byte[] start = in.readNBytes(SAMPLE - 1);
        in.reset();
        int end = start.length; // a sign that the sample cuts in two is no damage
        while (end > 0 && start.length == SAMPLE - 1 && start[end - 1] != '\n' && start[end - 1] != '\r') {
            end--;
        }
        BufferedReader sample = new BufferedReader(new InputStreamReader(
                new ByteArrayInputStream(start, mark(start), Math.max(0, end - mark(start))), charset.newDecoder()));
        TextSample first = TextSample.take(sample);
        Optional<TallyFile> settled = CsvFormat.settle(file, first, log);
        if (settled.isEmpty()) {
            return Optional.empty();
        }
        in.skipNBytes(mark(start));
        Optional<EstateFile> opened = header(settled.get(), in, mark(start), charset, log);
        opened.ifPresent(f -> noteClasses(f.header(), first, log));
        return opened;
    }

    /** What the first rows show holds for the file; the note stands once, whoever reads which rows. */
    private static void noteClasses(Header header, TextSample first, FileProblems log) {
        ClassNote note = new ClassNote(log);
        for (TextSample.Line row : first.rows(header.file().separator())) {
            note.see(new Row(header.file(), row.line(), row.fields(), header.position(), List.of(), header.names()));
        }
    }

    /** Length of a byte order mark. */
    private static int mark(byte[] start) {
        boolean marked =
                start.length >= 3 && start[0] == (byte) 0xEF && start[1] == (byte) 0xBB && start[2] == (byte) 0xBF;
        return marked ? 3 : 0;
    }

    /** The header is the first line that is not empty. */
    private static Optional<EstateFile> header(
            TallyFile file, InputStream in, long before, Charset charset, FileProblems log) throws IOException {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        long rowsFrom = before;
        long line = 0;
        int b = 0;
        while (b >= 0 && text.size() == 0) {
            line++;
            b = in.read();
            for (; b >= 0 && b != '\n' && b != '\r' && text.size() < LONGEST_HEADER; b = in.read()) {
                text.write(b);
            }
            rowsFrom += text.size() + (b < 0 ? 0 : 1) + (b == '\r' ? skipLineFeed(in) : 0);
        }
        if (text.size() == 0 || text.size() == LONGEST_HEADER) {
            log.unreadable(text.size() == 0 ? "the file is empty" : "the first line is too long for a header");
            return Optional.empty();
        }
        List<String> names;
        try {
            names = fields(text.toString(charset), file.separator());
        } catch (CsvParseException e) {
            log.unreadable("the quotes of the header do not fit: one is missing, or one too many");
            return Optional.empty();
        }
        long headerLine = line;
        long from = rowsFrom;
        return Header.match(file, names, headerLine, log)
                .map(h -> new EstateFile(file.path(), h, charset, from, headerLine + 1));
    }

    /** Skips the second of the two that end a line together; tells how many bytes that were. */
    private static int skipLineFeed(InputStream in) throws IOException {
        in.mark(1);
        if (in.read() == '\n') {
            return 1;
        }
        in.reset();
        return 0;
    }

    /** The trimmed fields of one line. */
    static List<String> fields(String line, char separator) {
        return CsvReader.builder().fieldSeparator(separator).detectBomHeader(false).ofCsvRecord(line).stream()
                .findFirst()
                .map(r -> r.getFields().stream().map(String::strip).toList())
                .orElse(List.of());
    }

    /** What to write where a file turns out not to be in the encoding it was opened in. */
    static String notIn(Charset charset) {
        return "the rows are not text in " + charset.name().toLowerCase(Locale.ROOT)
                + (charset.equals(StandardCharsets.UTF_8) ? "; name the encoding of the file under [[tally]]" : "");
    }
}
