package quadmean.scale;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** A way to read a range of the tally with FastCSV and nothing else: rows into fields, dbh and height into numbers. */
enum FloorReader {
    /** Records of text and the number parser of the JDK: how anybody would write it. */
    RECORDS {
        @Override
        FloorSums read(FileRange range) throws IOException {
            FloorSums sums = new FloorSums();
            boolean header = range.from() == 0;
            try (InputStream in = range.open();
                    CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(in, StandardCharsets.UTF_8)) {
                for (CsvRecord row : csv) {
                    if (header) {
                        header = false;
                    } else {
                        sums.row(number(row.getField(DBH)), number(row.getField(HEIGHT)));
                    }
                }
            }
            return sums;
        }

        private double number(String text) {
            return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
        }
    },

    /** Fields as letters in the reader's own buffer, of which no text is made: the strictest floor. */
    CALLBACK {
        @Override
        FloorSums read(FileRange range) throws IOException {
            Slices slices = new Slices(range.from() == 0);
            try (InputStream in = range.open();
                    CsvReader<FloorSums> csv = CsvReader.builder().build(slices, in, StandardCharsets.UTF_8)) {
                for (FloorSums unexpected : csv) {
                    throw new AssertionError(unexpected);
                }
            }
            return slices.sums;
        }
    };

    private static final int DBH = 4;
    private static final int HEIGHT = 5;

    /** Reads a range; the first line of a file is its header. */
    abstract FloorSums read(FileRange range) throws IOException;

    /** Sums rows as they come by and hands on no record. */
    private static final class Slices extends AbstractBaseCsvCallbackHandler<FloorSums> {
        private final FloorSums sums = new FloorSums();
        private boolean header;
        private double dbh;
        private double height;

        Slices(boolean header) {
            this.header = header;
        }

        @Override
        protected void handleBegin(long line) {
            dbh = Double.NaN;
            height = Double.NaN;
        }

        @Override
        protected void handleField(int field, char[] letters, int offset, int length, boolean quoted) {
            if (header) {
                return;
            }
            if (field == DBH) {
                dbh = CharNumbers.parse(letters, offset, length);
            } else if (field == HEIGHT) {
                height = CharNumbers.parse(letters, offset, length);
            }
        }

        @Override
        protected @Nullable FloorSums buildRecord() {
            if (header) {
                header = false;
            } else {
                sums.row(dbh, height);
            }
            return null;
        }
    }
}
