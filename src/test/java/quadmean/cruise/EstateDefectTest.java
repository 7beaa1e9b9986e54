package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quadmean.design.Design;
import quadmean.field.EstateFile;
import quadmean.field.EstateFiles;
import quadmean.field.EstatePosition;
import quadmean.field.EstateSink;
import quadmean.field.RangeReader;
import quadmean.field.RowFindings;
import quadmean.model.Tree;
import quadmean.support.FormulaEstate;

/** A defect in a thread that reads an estate comes out as a defect, neither hanging nor taken for a broken file. */
class EstateDefectTest {
    @TempDir
    Path folder;

    /** Fails at the hundredth tree. */
    private static final class Failing implements EstateSink {
        private int trees;

        @Override
        public int stand(String code) {
            return 0;
        }

        @Override
        public int kind(int stand) {
            return 0;
        }

        @Override
        public void begin(int stand, String plot, long line) {}

        @Override
        public int work(int stand, Tree tree, Use use, RowFindings problems) {
            trees++;
            if (trees == 100) {
                throw new ArithmeticException("a defect");
            }
            return 0;
        }

        @Override
        public void add(int number) {}

        @Override
        public void end() {}
    }

    @Test
    void defectsOfThreadsComeOut() throws IOException {
        String tally = FormulaEstate.HEADER + String.join("\n", new FormulaEstate(1, 1).lines()) + "\n";
        Files.writeString(folder.resolve("t.csv"), tally);
        Design design = FormulaEstate.estate(folder, "t.csv", "region", "");
        List<EstateFile> files = EstateFiles.open(design, p -> Assertions.fail(p.toString()));
        for (int threads = 1; threads <= 3; threads++) {
            EstatePass<RangeReader, Object> pass = new EstatePass<>(
                    files,
                    threads,
                    1 << 22,
                    code -> true,
                    () -> new RangeReader(design, new Failing(), 10),
                    RangeReader::read);
            ArithmeticException defect = Assertions.assertTimeoutPreemptively(
                    Duration.ofSeconds(30),
                    () -> assertThrows(
                            ArithmeticException.class,
                            () -> pass.run(EstatePosition.START, (read, range, done) -> {})));
            assertEquals("a defect", defect.getMessage());
        }
    }
}
