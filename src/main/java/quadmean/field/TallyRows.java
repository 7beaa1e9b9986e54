package quadmean.field;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import quadmean.design.TallyFile;

/** Streams the rows of a tally of either kind; the file itself says which it is. */
final class TallyRows {
    private TallyRows() {}

    /**
     * Hands each data row to a consumer, in file order.
     *
     * @throws IOException if the file is missing or cannot be read
     */
    static void forEach(TallyFile file, FileProblems problems, Consumer<Row> rows) throws IOException {
        Optional<String> refused = refused(file);
        if (refused.isPresent()) {
            problems.unreadable(refused.get());
        } else if (isNamedWorkbook(file)) {
            new XlsxRows(file, problems).forEach(rows);
        } else {
            new CsvRows(file, problems).forEach(rows);
        }
    }

    static boolean isNamedWorkbook(TallyFile file) {
        return String.valueOf(file.path().getFileName())
                .toLowerCase(Locale.ROOT)
                .endsWith(".xlsx");
    }

    /** Why a file is not what its name says, if so: by its first bytes. */
    static Optional<String> refused(TallyFile file) throws IOException {
        if (Files.isDirectory(file.path())) {
            return Optional.of("this is a folder");
        }
        byte[] start;
        try (InputStream in = Files.newInputStream(file.path())) {
            start = in.readNBytes(4);
        }
        String hex = HexFormat.of().formatHex(start);
        if (hex.equals("d0cf11e0")) {
            return Optional.of("this is a workbook of the old kind (.xls) or an encrypted one; save it as .xlsx"
                    + " without a password");
        }
        boolean zip = hex.startsWith("504b0304") || hex.startsWith("504b0506");
        if (isNamedWorkbook(file)) {
            return zip
                    ? Optional.empty()
                    : Optional.of(
                            start.length == 0 ? "the file is empty" : "this is no workbook, whatever its name says");
        }
        return zip
                ? Optional.of("this is a workbook or a zip; a workbook needs a name that ends in .xlsx")
                : Optional.empty();
    }
}
