package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.field.FelledOptions.Measure;
import quadmean.model.FelledData;
import quadmean.model.FelledTree;
import quadmean.model.Policy;
import quadmean.model.Rule;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Tables of felled trees. */
class FelledReaderTest {
    private static final FelledOptions OPEN = new FelledOptions(Map.of(), Policy.REFUSE);
    private static final FelledOptions DROP = new FelledOptions(Map.of(), Policy.DROP);

    @TempDir
    Path folder;

    private FelledData read(String text, FelledOptions options) throws IOException {
        return FelledReader.read(Files.writeString(folder.resolve("felled.csv"), text), options);
    }

    private static List<String> described(FelledData data) {
        return data.problems().stream()
                .map(p -> p.rule().code() + " " + p.policy().id() + " row " + p.row() + " [" + p.column() + "] "
                        + p.value())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dbh_in,height_ft,volume_ft3",
                "DBH (in),Total height (ft),Volume (ft3)",
                "Diameter [inches],Ht [feet],Vol [cu ft]",
                "d in,h ft,v ft³"
            })
    void columnsAndUnitsAreReadOffTheHeader(String header) throws IOException {
        FelledData data = read(header + "\n10,50,9.5\n", OPEN);
        assertEquals(List.of(), described(data));
        FelledTree tree = data.trees().get(0);
        assertEquals(25.4, tree.dbhCm(), 1e-12);
        assertEquals(15.24, tree.heightM(), 1e-12);
        assertEquals(9.5 * 0.028316846592, tree.volumeM3(), 1e-15);
        assertEquals("row 2", tree.id());
        assertEquals(UnitSystem.US, data.units());
    }

    @Test
    void optionsNameColumnsAndUnits() throws IOException {
        String text = "no;code;a:b;tall;wood\nT1;ABBA;25,4;15,2;0,31\nT2;PIGL;30;18;0,55\n";
        FelledOptions options = new FelledOptions(
                Map.of(
                        Measure.TREE, "no",
                        Measure.SPECIES, "code",
                        Measure.DBH, "a:b:cm",
                        Measure.HEIGHT, "tall:m",
                        Measure.VOLUME, "wood:m3"),
                Policy.REFUSE);
        FelledData data = read(text, options);
        assertEquals(
                List.of("format-detected keep row 0 [separator] ;", "format-detected keep row 0 [decimal] ,"),
                described(data));
        assertEquals(
                List.of(
                        new FelledTree("T1", 2, "ABBA", 25.4, 15.2, 0.31),
                        new FelledTree("T2", 3, "PIGL", 30, 18, 0.55)),
                data.trees());
        assertEquals(UnitSystem.METRIC, data.units());
        assertEquals(Unit.METRE, data.heightUnit());
        assertEquals(
                List.of(
                        "tree \"no\"",
                        "species \"code\"",
                        "dbh \"a:b\" (cm)",
                        "height \"tall\" (m)",
                        "volume \"wood\" (m3)"),
                data.columns());
    }

    @Test
    void everyTroubleWithColumnsIsToldAtOnce() throws IOException {
        FelledOptions options = new FelledOptions(
                Map.of(Measure.DBH, "dbb:cm", Measure.VOLUME, "vol_m3:ft3", Measure.SPECIES, "sp"), Policy.REFUSE);
        FelledData data = read("dbh,ht,vol_m3\n25,15,0.3\n", options);
        assertTrue(data.isRefused());
        assertEquals(
                List.of(
                        "felled-column refuse row 1 [sp] ",
                        "felled-column refuse row 1 [dbb] ",
                        "felled-column refuse row 1 [ht] ",
                        "felled-column refuse row 1 [vol_m3] "),
                described(data));
        assertTrue(data.problems().get(1).detail().contains("did you mean \"dbh\"?"));
        assertTrue(data.problems().get(2).detail().contains("the unit of \"ht\" is not known"));
        assertTrue(data.problems().get(3).detail().contains("the header says m3, --volume says ft3"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dbh_cm,height_m | no column is plainly the volume",
                "dbh_cm,dbh_cm,height_m,volume_m3 | no column is plainly the dbh",
                "'' | the file is empty"
            })
    void aHeaderThatLacksAColumnIsRefused(String header, String words) throws IOException {
        FelledData data = read(header.isEmpty() ? "" : header + "\n25,15,0.3,1\n", OPEN);
        assertTrue(data.isRefused());
        assertTrue(
                data.problems().get(0).detail().contains(words), data.problems().toString());
    }

    @Test
    void oneColumnCannotHoldTwoThings() throws IOException {
        FelledOptions options =
                new FelledOptions(Map.of(Measure.DBH, "height_m", Measure.VOLUME, "volume_m3"), Policy.REFUSE);
        FelledData data = read("height_m,volume_m3\n15,0.3\n", options);
        assertTrue(
                data.problems().get(0).detail().contains("cannot hold two things"),
                data.problems().toString());
        FelledData twice = read(
                "x,x,height_m,volume_m3\n15,1,1,0.3\n", new FelledOptions(Map.of(Measure.DBH, "x:cm"), Policy.REFUSE));
        assertTrue(
                twice.problems().get(0).detail().contains("has \"x\" twice"),
                twice.problems().toString());
    }

    private static final String BROKEN = """
            tree,dbh_cm,height_m,volume_m3
            1,25,15,0.31
            2,,15,0.31
            3,25,abc,-1
            4,0,140,0.31
            1,26,16,0.35
            5,25,15
            6,25,15,2500
            7,30,17,0.5
            8,31,17,0.55
            """;

    @Test
    void everyBadRowIsToldAndRefused() throws IOException {
        FelledData data = read(BROKEN, OPEN);
        assertTrue(data.isRefused());
        assertEquals(
                List.of(
                        "felled-value refuse row 3 [dbh_cm] ",
                        "felled-value refuse row 4 [height_m] abc",
                        "felled-value refuse row 4 [volume_m3] -1",
                        "felled-value refuse row 5 [dbh_cm] 0",
                        "felled-value refuse row 5 [height_m] 140",
                        "felled-repeated refuse row 6 [tree] 1",
                        "row-length refuse row 7 [] 5,25,15",
                        "felled-value refuse row 8 [volume_m3] 2500"),
                described(data));
    }

    @Test
    void badRowsAreDroppedAndListedWhereThatIsAsked() throws IOException {
        FelledData data = read(BROKEN, DROP);
        assertTrue(!data.isRefused());
        assertEquals(
                8,
                data.problems().stream().filter(p -> p.policy() == Policy.DROP).count());
        assertEquals(
                List.of("1", "7", "8"),
                data.trees().stream().map(FelledTree::id).toList());
        assertEquals(9, data.rows().in());
        assertEquals(3, data.rows().used());
        assertEquals(6, data.rows().dropped());
    }

    @Test
    void anUnlikelyVolumeIsUsedAndListed() throws IOException {
        FelledData data = read("dbh_cm,height_m,volume_m3\n25,15,0.31\n25,15,0.031\n30,17,0.5\n", OPEN);
        assertEquals(List.of("felled-unlikely keep row 3 [volume_m3] 0.031"), described(data));
        assertEquals(3, data.rows().used());
        assertEquals(1, data.rows().kept());
    }

    @Test
    void aVolumeOfNoStemIsABadRow() throws IOException {
        String text = "dbh_cm,height_m,volume_m3\n25,15,0.31\n25,15,0.0031\n30,17,0.5\n";
        assertEquals(List.of("felled-unlikely refuse row 3 [volume_m3] 0.0031"), described(read(text, OPEN)));
        FelledData dropped = read(text, DROP);
        assertEquals(List.of("felled-unlikely drop row 3 [volume_m3] 0.0031"), described(dropped));
        assertEquals(2, dropped.rows().used());
    }

    /** Cubic feet taken for cubic metres are off by 35 in every row. */
    @Test
    void aWrongUnitIsRefused() throws IOException {
        FelledData data = read("dbh_cm,height_m,volume_m3\n25,15,10.9\n25,16,11.5\n30,17,17.6\n", DROP);
        assertEquals(List.of("felled-unlikely refuse row 0 [] "), described(data));
        assertTrue(data.isRefused());
    }

    @Test
    void aMissingSpeciesIsABadRow() throws IOException {
        FelledOptions options = new FelledOptions(Map.of(Measure.SPECIES, "sp"), Policy.DROP);
        FelledData data = read("sp,dbh_cm,height_m,volume_m3\nA,25,15,0.31\n,25,15,0.31\n", options);
        assertEquals(List.of("species-missing drop row 3 [sp] "), described(data));
    }

    @Test
    void aBrokenQuoteAndForeignBytesAreRefused() throws IOException {
        assertTrue(read("dbh_cm,height_m,volume_m3\n25,\"15,0.31\n26,16,0.3\n", DROP)
                .isRefused());
        Path file = folder.resolve("felled.csv");
        Files.write(file, new byte[] {'P', 'K', 3, 4, 0, 0});
        assertEquals(
                Rule.FILE_UNREADABLE,
                FelledReader.read(file, OPEN).problems().get(0).rule());
        Files.write(file, "dbh_cm,height_m,volume_m3\n25,15,0.3\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
        FelledData latin = FelledReader.read(file, OPEN);
        assertTrue(latin.isRefused());
    }

    @Test
    void aWorkbookIsReadAsWell() throws IOException {
        Path file = folder.resolve("felled.xlsx");
        Files.write(file, Workbooks.ofCsv("tree,dbh_cm,height_m,volume_m3\n1,25.4,15,0.31\n2,x,16,0.35\n"));
        FelledData data = FelledReader.read(file, DROP);
        assertEquals(List.of("felled-value drop row 3 [dbh_cm] x"), described(data));
        assertEquals(List.of(new FelledTree("1", 2, "", 25.4, 15, 0.31)), data.trees());
    }

    @Test
    void badRowsCannotBeKept() {
        assertThrows(IllegalArgumentException.class, () -> new FelledOptions(Map.of(), Policy.KEEP));
    }
}
