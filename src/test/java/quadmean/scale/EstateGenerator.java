package quadmean.scale;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import quadmean.scale.EstateDesign.Curves;
import quadmean.scale.EstateFiles.Existing;
import quadmean.scale.EstateFiles.Packing;

/**
 * Writes an invented estate of any size, in memory that does not grow with it: {@code EstateGenerator DIR STANDS PLOTS_PER_STAND
 * TREES_PER_PLOT SEED [gz] [files=N] [replace]}. The same seed gives the same rows however they are split and packed.
 */
public final class EstateGenerator {
    private static final String TALLY_HEADER = "stand,plot,tree,species,dbh_cm,height_m";
    private static final String STANDS_HEADER = "stand,area_ha,region,stratum\n";

    private final EstateSize size;
    private final EstateFiles files;

    EstateGenerator(EstateSize size, EstateFiles files) {
        this.size = size;
        this.files = files;
    }

    /** Writes an estate and prints what it holds. */
    public static void main(String[] args) throws IOException {
        List<String> words = Arrays.asList(args).subList(5, args.length);
        EstateSize size = new EstateSize(
                Integer.parseInt(args[1]),
                Integer.parseInt(args[2]),
                Integer.parseInt(args[3]),
                Long.parseLong(args[4]));
        EstateFiles files = new EstateFiles(
                Path.of(args[0]),
                words.stream()
                        .filter(w -> w.startsWith("files="))
                        .mapToInt(w -> Integer.parseInt(w.substring("files=".length())))
                        .findFirst()
                        .orElse(1),
                words.contains("gz") ? Packing.GZIP : Packing.PLAIN,
                words.contains("replace") ? Existing.REPLACE : Existing.REFUSE);
        long start = System.nanoTime();
        EstateCount count = new EstateGenerator(size, files).write();
        System.out.printf(
                Locale.ROOT,
                "%d stands, %d plots (%d empty), %d trees (%d with a height), %d rows in %.1f s%n",
                count.stands(),
                count.plots(),
                count.emptyPlots(),
                count.trees(),
                count.heights(),
                count.rows(),
                (System.nanoTime() - start) / 1e9);
    }

    /**
     * Writes all files.
     *
     * @return what the tally holds
     * @throws IOException if a file is there already and must not be replaced, or cannot be written
     */
    EstateCount write() throws IOException {
        files.prepare();
        Files.writeString(files.design(), EstateDesign.text(size, files, Curves.FITTED));
        Files.writeString(files.designWithCurves(), EstateDesign.text(size, files, Curves.GIVEN));
        Files.writeString(files.curves(), EstateDesign.curves());
        EstateCount count = new EstateCount();
        SplittableRandom seeds = new SplittableRandom(size.seed());
        try (BufferedWriter stands = Files.newBufferedWriter(files.stands())) {
            stands.write(STANDS_HEADER);
            for (int part = 0; part < files.tallies(); part++) {
                writePart(part, stands, seeds, count);
            }
        }
        return count;
    }

    private void writePart(int part, BufferedWriter stands, SplittableRandom seeds, EstateCount count)
            throws IOException {
        RowBuffer buffer = new RowBuffer();
        try (OutputStream out = files.openTally(part)) {
            buffer.add(RowBuffer.ascii(TALLY_HEADER)).endRow(out);
            for (int number = firstOf(part); number < firstOf(part + 1); number++) {
                InventedStand stand = new InventedStand(number, size, seeds.split());
                stands.write(stand.row());
                stand.tally(buffer, out, count);
            }
            buffer.flush(out);
        }
    }

    private int firstOf(int part) {
        return 1 + (int) ((long) size.stands() * part / files.tallies());
    }
}
