package quadmean.field;

import java.io.IOException;
import java.nio.file.Files;
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
        if (Files.isDirectory(file.path())) {
            problems.unreadable("this is a folder");
            return;
        }
        new CsvRows(file, problems).forEach(rows);
    }
}
