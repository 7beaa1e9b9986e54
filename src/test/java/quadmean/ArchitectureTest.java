package quadmean;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.text.DecimalFormat;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The house as a table: which room may use which rooms and which libraries. Every room may use the JDK and jspecify. */
class ArchitectureTest {
    private static final String MATH = "org.apache.commons.math3..";
    private static final String TOML = "org.tomlj..";
    private static final String CSV = "de.siegmar.fastcsv..";
    private static final String WORKBOOK = "org.dhatim.fastexcel..";
    private static final String PICTURES = "org.knowm.xchart..";
    private static final String DRAWINGS = "de.erichseifert.vectorgraphics2d..";
    private static final String JSON = "com.fasterxml.jackson..";
    private static final String GEOMETRY = "org.locationtech.jts..";
    private static final String PROJECTIONS = "org.locationtech.proj4j..";
    private static final String GEODESICS = "net.sf.geographiclib..";
    private static final String GPX = "io.jenetics.jpx..";
    private static final String OPTIONS = "picocli..";

    private static final String RESULTS = "model design height volume estimate cruise plan simulate stats units";

    private static final List<Room> HOUSE = List.of(
            new Room("units", ""),
            new Room("stats", "", MATH),
            new Room("model", "units"),
            new Room("design", "model units", TOML),
            new Room("measure", "units"),
            new Room("field", "design model measure units", CSV),
            new Room("height", "model stats units"),
            new Room("volume", "model stats units"),
            new Room("estimate", "model stats units height volume"),
            new Room("cruise", "design field height volume estimate stats model units"),
            new Room("plan", "design model measure stats units"),
            new Room("layout", "design model measure units", GEOMETRY, PROJECTIONS, GEODESICS, GPX, JSON),
            new Room("simulate", "design measure layout cruise estimate model stats units", GEOMETRY),
            new Room("audit", "cruise design estimate stats model units"),
            new Room("chart", RESULTS, PICTURES, DRAWINGS),
            new Room("report", "chart layout audit " + RESULTS, JSON, CSV, WORKBOOK),
            new Room("cli", "measure field chart report layout audit " + RESULTS, OPTIONS));

    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("quadmean");

    /**
     * A room.
     *
     * @param name package under {@code quadmean}
     * @param rooms the other rooms that it may use, parted by spaces
     * @param libraries packages of third parties that it may use
     */
    private record Room(String name, String rooms, String... libraries) {
        String itself() {
            return packageOf(name);
        }

        String[] allowed() {
            Stream<String> others =
                    Arrays.stream(rooms.split(" ")).filter(r -> !r.isEmpty()).map(ArchitectureTest::packageOf);
            Stream<String> always = Stream.of(itself(), "java..", "javax..", "org.jspecify..");
            return Stream.of(others, always, Arrays.stream(libraries))
                    .flatMap(s -> s)
                    .toArray(String[]::new);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Room> house() {
        return HOUSE;
    }

    @ParameterizedTest
    @MethodSource("house")
    void aRoomUsesOnlyWhatTheTableAllows(Room room) {
        check(classes()
                .that()
                .resideInAPackage(room.itself())
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(room.allowed()));
    }

    @Test
    void everyClassIsInARoom() {
        check(classes()
                .should()
                .resideInAnyPackage(
                        Stream.concat(Stream.of("quadmean"), HOUSE.stream().map(Room::itself))
                                .toArray(String[]::new)));
        assertTrue(CODE.contain("quadmean.units.Unit"), "the code under test was not found");
    }

    @Test
    void roomsFormNoCycles() {
        check(slices().matching("quadmean.(*)..").should().beFreeOfCycles());
    }

    @Test
    void nothingDependsOnTheCommandLine() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage(packageOf("cli"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(packageOf("cli")));
    }

    @Test
    void onlyTheCommandLinePrints() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage(packageOf("cli"))
                .should(ACCESS_STANDARD_STREAMS)
                .orShould()
                .accessField(System.class, "in"));
    }

    @Test
    void onlyTheCommandLineExits() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage(packageOf("cli"))
                .should()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "halt", int.class));
    }

    @Test
    void publicFieldsAreFinal() {
        check(fields().that().arePublic().should().beFinal());
    }

    /** A decimal comma in a data file is silent damage. */
    @Test
    void numbersAndLettersAreWrittenWithALocale() {
        check(noClasses()
                .should()
                .callMethod(String.class, "format", String.class, Object[].class)
                .orShould()
                .callMethod(String.class, "formatted", Object[].class)
                .orShould()
                .callMethod(String.class, "toUpperCase")
                .orShould()
                .callMethod(String.class, "toLowerCase")
                .orShould()
                .callMethod(PrintStream.class, "printf", String.class, Object[].class)
                .orShould()
                .callMethod(PrintWriter.class, "printf", String.class, Object[].class)
                .orShould()
                .callConstructor(DecimalFormat.class, String.class));
    }

    private static void check(ArchRule rule) {
        rule.check(CODE);
    }

    private static String packageOf(String room) {
        return "quadmean." + room + "..";
    }
}
