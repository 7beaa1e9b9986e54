package quadmean.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.field.CurveFile;
import quadmean.height.FillingCurves;
import quadmean.model.FillingCurve;
import quadmean.model.Problem;
import quadmean.scale.EstateFiles.Existing;
import quadmean.scale.EstateFiles.Packing;

/** The generator of estates: what it says that it wrote is what lies there. */
class EstateGeneratorTest {
    private static final EstateSize SIZE = new EstateSize(400, 6, 8, 11);

    @TempDir
    private Path folder;

    @Test
    void theSameSeedGivesTheSameBytes() throws IOException {
        EstateFiles one = plain("one");
        EstateFiles two = plain("two");
        EstateFiles other = plain("other");
        write(SIZE, one);
        write(SIZE, two);
        write(new EstateSize(400, 6, 8, 12), other);
        for (Path file : List.of(one.stands(), one.curves(), one.design(), one.designWithCurves(), one.tally(0))) {
            assertEquals(
                    -1,
                    Files.mismatch(
                            file, folder.resolve("two").resolve(one.folder().relativize(file))));
        }
        assertNotEquals(-1, Files.mismatch(one.tally(0), other.tally(0)));
    }

    @Test
    void rowsOfAPlotStandTogetherAndStandsComeInTheOrderOfTheirTable() throws IOException {
        EstateFiles files = plain("estate");
        write(SIZE, files);
        List<String> stands = Files.readAllLines(files.stands());
        Set<String> plots = new HashSet<>();
        String plot = "";
        int stand = 0;
        for (String row : dataRows(files.tally(0))) {
            String[] fields = row.split(",", -1);
            if (!plot.equals(fields[0] + "," + fields[1])) {
                plot = fields[0] + "," + fields[1];
                assertTrue(plots.add(plot), plot + " is not in one piece");
            }
            while (!stands.get(stand).startsWith(fields[0] + ",")) {
                stand++;
            }
        }
        assertEquals(SIZE.stands(), stand);
    }

    @Test
    void countsAreThoseOfTheFile() throws IOException {
        EstateFiles files = plain("estate");
        EstateCount count = write(SIZE, files);
        List<String> rows = dataRows(files.tally(0));
        assertEquals(SIZE.stands(), count.stands());
        assertEquals(SIZE.stands(), Files.readAllLines(files.stands()).size() - 1);
        assertEquals(count.rows(), rows.size());
        assertEquals(
                count.emptyPlots(),
                rows.stream().filter(r -> r.endsWith(",,,,")).count());
        assertEquals(
                count.heights(), rows.stream().filter(r -> !r.endsWith(",")).count());
        assertEquals(
                count.plots(),
                rows.stream()
                        .map(r -> r.substring(0, r.indexOf(',', r.indexOf(',') + 1)))
                        .distinct()
                        .count());
    }

    /**
     * Within four standard errors of what was asked for: of uniform numbers of plots (2 to 10), of a ratio over stands whose
     * levels are lognormal, of binomial shares.
     */
    @Test
    void anEstateIsAsLargeAsItWasAskedToBe() throws IOException {
        EstateCount count = write(SIZE, plain("estate"));
        double plotsSd = Math.sqrt((9 * 9 - 1) / 12.0);
        double plotsCv = plotsSd / SIZE.plotsPerStand();
        double levelSd = SIZE.treesPerPlot() * Math.sqrt(Math.exp(0.35 * 0.35) - 1);
        double stands = Math.sqrt(SIZE.stands());
        assertEquals(SIZE.plotsPerStand(), (double) count.plots() / count.stands(), 4 * plotsSd / stands);
        assertEquals(
                SIZE.treesPerPlot(),
                (double) count.trees() / count.plots(),
                4 * levelSd * Math.sqrt(1 + plotsCv * plotsCv) / stands);
        assertEquals(0.1, (double) count.heights() / count.trees(), 4 * Math.sqrt(0.1 * 0.9 / count.trees()));
        assertEquals(0.01, (double) count.emptyPlots() / count.plots(), 4 * Math.sqrt(0.01 * 0.99 / count.plots()));
    }

    @Test
    void diametersAndHeightsAreThoseOfTrees() throws IOException {
        EstateFiles files = plain("estate");
        write(SIZE, files);
        for (String row : dataRows(files.tally(0))) {
            String[] fields = row.split(",", -1);
            if (!fields[4].isEmpty()) {
                double dbh = Double.parseDouble(fields[4]);
                assertTrue(dbh >= 5 && dbh <= 120, row);
                assertTrue(fields[4].matches("\\d+\\.\\d"), row);
                assertTrue(fields[5].isEmpty() || fields[5].matches("\\d+\\.\\d"), row);
                assertTrue(fields[5].isEmpty() || Double.parseDouble(fields[5]) > 1.3, row);
            }
        }
    }

    @Test
    void splittingAndPackingChangeNoRow() throws IOException {
        EstateFiles whole = plain("whole");
        EstateFiles split = new EstateFiles(folder.resolve("split"), 7, Packing.GZIP, Existing.REFUSE);
        write(SIZE, whole);
        write(SIZE, split);
        StringBuilder joined = new StringBuilder();
        for (int part = 0; part < split.tallies(); part++) {
            try (InputStream in = new GZIPInputStream(Files.newInputStream(split.tally(part)))) {
                String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                joined.append(part == 0 ? text : text.substring(text.indexOf('\n') + 1));
            }
        }
        assertEquals(Files.readString(whole.tally(0)), joined.toString());
        assertEquals(-1, Files.mismatch(whole.stands(), split.stands()));
    }

    @Test
    void whatLiesThereIsKeptUnlessSaidOtherwise() throws IOException {
        EstateFiles files = plain("estate");
        write(SIZE, files);
        EstateSize small = new EstateSize(3, 2, 2, 1);
        assertThrows(FileAlreadyExistsException.class, () -> write(small, files));
        assertEquals(SIZE.stands(), Files.readAllLines(files.stands()).size() - 1);
        write(small, new EstateFiles(files.folder(), 1, Packing.PLAIN, Existing.REPLACE));
        assertEquals(small.stands(), Files.readAllLines(files.stands()).size() - 1);
    }

    @Test
    void theDesignSaysThatAllIsInventedAndHasAnEquationForEverySpecies() throws IOException {
        EstateFiles files = plain("estate");
        write(SIZE, files);
        TomlParseResult design = Toml.parse(files.design());
        assertEquals(List.of(), design.errors());
        assertTrue(Files.readString(files.design()).startsWith("# An invented estate"));
        for (InventedWoods.Species s : InventedWoods.SPECIES) {
            assertEquals("invented", design.getString("volume." + s.code() + ".standing"));
        }
    }

    @Test
    void theProgramReadsBothDesignsAndTheCurvesThatHeightsWereDrawnAbout() throws IOException {
        EstateFiles files = plain("estate");
        write(SIZE, files);
        List<Problem> problems = new ArrayList<>();
        Design fitted = read(files.design());
        Design given = read(files.designWithCurves());
        assertEquals(Optional.empty(), fitted.estate().orElseThrow().curves());
        Path file = given.estate().orElseThrow().curves().orElseThrow();
        Map<String, List<FillingCurve>> curves =
                CurveFile.read(given, file, FillingCurves::parametersOf, problems::add);
        assertEquals(List.of(), problems);
        for (int region = 0; region < InventedWoods.REGIONS.size(); region++) {
            List<FillingCurve> found = curves.get(InventedWoods.REGIONS.get(region));
            for (int s = 0; s < InventedWoods.SPECIES.size(); s++) {
                InventedWoods.Species species = InventedWoods.SPECIES.get(s);
                assertEquals(species.code(), found.get(s).species());
                assertEquals(species.curve(region).height(40), FillingCurves.heightMetres(found.get(s), 40), 1e-9);
            }
        }
    }

    @Test
    void sharesOfEveryRegionAddUp() {
        for (int region = 0; region < InventedWoods.REGIONS.size(); region++) {
            int[] found = new int[InventedWoods.SPECIES.size()];
            for (int percent = 0; percent < 100; percent++) {
                found[InventedWoods.species(region, percent)]++;
            }
            for (int s = 0; s < found.length; s++) {
                assertEquals(InventedWoods.share(region, s), found[s]);
            }
        }
    }

    private static Design read(Path file) throws IOException {
        DesignReading reading = DesignReader.read(file);
        assertEquals(List.of(), reading.problems());
        return Objects.requireNonNull(reading.design());
    }

    private EstateFiles plain(String name) {
        return new EstateFiles(folder.resolve(name), 1, Packing.PLAIN, Existing.REFUSE);
    }

    private static EstateCount write(EstateSize size, EstateFiles files) throws IOException {
        return new EstateGenerator(size, files).write();
    }

    private static List<String> dataRows(Path tally) throws IOException {
        List<String> lines = Files.readAllLines(tally);
        assertEquals("stand,plot,tree,species,dbh_cm,height_m", lines.get(0));
        return lines.subList(1, lines.size());
    }
}
