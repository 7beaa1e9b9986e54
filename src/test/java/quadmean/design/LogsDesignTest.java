package quadmean.design;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.model.BarkSpec;
import quadmean.model.CubicRule;
import quadmean.model.LogRule;
import quadmean.model.LogSettings;
import quadmean.model.Price;
import quadmean.model.Price.PriceUnit;
import quadmean.model.PriceList;
import quadmean.model.Problem;
import quadmean.model.Product;
import quadmean.model.Provenance;
import quadmean.model.Scaling;
import quadmean.model.Standing;
import quadmean.model.TaperForm;
import quadmean.model.TaperSpec;
import quadmean.support.SmallDesign;
import quadmean.units.Unit;

/** What a design says of stems, logs and prices; expected sizes are those written, converted by exact factors. */
class LogsDesignTest {
    private static final double FOOT = 0.3048;

    /** Added to {@link SmallDesign#TEXT}; the first line is line 24 of the design. */
    private static final String WOOD = """
            [taper.PSME]
            form = "form_class"
            fc = 78
            source = "Cobbler Ridge, 2025"
            standing = "invented"
            [taper.PSME.bark]
            a = 0.903563
            b = 0.989388
            unit = "in"
            source = "Larsen & Hann 1985"
            standing = "from_memory"
            [logs]
            method = "best_value"
            rule = "scribner_decimal_c"
            [[product]]
            code = "saw"
            name = "sawlogs"
            species = ["PSME"]
            grades = ["1", "2"]
            lengths = [16, 12.5]
            min_small_end = 6
            max_large_end = 30
            defect = 5
            [[product]]
            code = "pulp"
            lengths = [8]
            min_small_end = 3
            [prices]
            currency = "USD"
            date = "spring 2026"
            source = "made up"
            standing = "invented"
            [[price]]
            product = "saw"
            species = "PSME"
            amount = 550
            per = "mbf"
            [[price]]
            product = "pulp"
            amount = 20
            per = "100ft3"
            """;

    private static final SmallDesign US = new SmallDesign()
            .with("\"metric\"", "\"us\"")
            .with("\"cm\"", "\"in\"")
            .with("\"m\"", "\"ft\"")
            .plus(WOOD);

    @TempDir
    Path folder;

    private static double inches(double value) {
        return Unit.INCH.convert(value, Unit.CENTIMETRE);
    }

    @Test
    void everyKeyIsReadInTheUnitsOfTheDesign() {
        WoodSettings wood = US.valid(folder).wood();
        LogSettings logs = wood.logs().orElseThrow();
        Product saw = new Product(
                "saw",
                "sawlogs",
                Set.of("PSME"),
                Set.of("1", "2"),
                List.of(16 * FOOT, 12.5 * FOOT),
                inches(6),
                inches(30),
                0.05);
        Product pulp = new Product(
                "pulp", "pulp", Set.of(), Set.of(), List.of(8 * FOOT), inches(3), Double.POSITIVE_INFINITY, 0);
        assertAll(
                () -> assertEquals(LogSettings.Method.BEST_VALUE, logs.method()),
                () -> assertEquals(
                        new Scaling(
                                LogRule.SCRIBNER_DECIMAL_C,
                                Scaling.Diameters.NEAREST_INCH,
                                Scaling.Lengths.FOOT_DOWN,
                                Scaling.Figures.AS_TABLED,
                                20 * FOOT),
                        logs.scaling().orElseThrow()),
                () -> assertEquals(CubicRule.SMALIAN, logs.cubic()),
                () -> assertEquals(FOOT, logs.stumpM()),
                () -> assertEquals(0.5 * FOOT, logs.trimM()),
                () -> assertEquals(FOOT, logs.wasteStepM()),
                () -> assertEquals(List.of(saw, pulp), logs.products()),
                () -> assertEquals(
                        new PriceList(
                                "USD",
                                "spring 2026",
                                List.of(
                                        new Price("saw", "PSME", 550, PriceUnit.THOUSAND_BOARD_FEET),
                                        new Price("pulp", "*", 20, PriceUnit.HUNDRED_CUBIC_FEET)),
                                new Provenance("made up", Standing.INVENTED)),
                        wood.prices().orElseThrow()));
    }

    @Test
    void taperAndBarkAreReadWithTheirOwnUnitsAndSources() {
        TaperSpec taper =
                Objects.requireNonNull(US.valid(folder).wood().tapers().get("PSME"));
        BarkSpec bark =
                new BarkSpec(0.903563, 0.989388, Unit.INCH, new Provenance("Larsen & Hann 1985", Standing.FROM_MEMORY));
        Provenance invented = new Provenance("Cobbler Ridge, 2025", Standing.INVENTED);
        assertEquals(
                new TaperSpec("PSME", TaperForm.FORM_CLASS, List.of(78.0, 0.38), Optional.of(bark), invented), taper);
    }

    @Test
    void aMetricDesignNeedsNoLogRule() {
        String wood = """
                [taper."*"]
                form = "kozak_1969"
                b0 = 0.95
                b1 = -1.15
                b2 = 0.2
                source = "S"
                standing = "invented"
                [taper."*".bark]
                a = 0.9
                source = "S"
                standing = "invented"
                [logs]
                cubic = "huber"
                stump = 0.25
                trim = 0
                [[product]]
                code = "saw"
                lengths = [5.1, 4]
                min_small_end = 14
                """;
        WoodSettings read = new SmallDesign().plus(wood).valid(folder).wood();
        LogSettings logs = read.logs().orElseThrow();
        TaperSpec taper = Objects.requireNonNull(read.tapers().get("*"));
        assertAll(
                () -> assertEquals(LogSettings.Method.LENGTHS, logs.method()),
                () -> assertEquals(Optional.empty(), logs.scaling()),
                () -> assertEquals(CubicRule.HUBER, logs.cubic()),
                () -> assertEquals(0.25, logs.stumpM()),
                () -> assertEquals(0, logs.trimM()),
                () -> assertEquals(0.3, logs.wasteStepM()),
                () -> assertEquals(List.of(5.1, 4.0), logs.products().get(0).lengthsM()),
                () -> assertEquals(14, logs.products().get(0).minSmallEndCm()),
                () -> assertEquals(List.of(0.95, -1.15, 0.2), taper.coefficients()),
                () -> assertEquals(Unit.CENTIMETRE, taper.bark().orElseThrow().unit()),
                () -> assertEquals(Optional.empty(), read.prices()));
    }

    @Test
    void withoutTheseTablesNoStemIsCut() {
        assertEquals(WoodSettings.NONE, new SmallDesign().valid(folder).wood());
    }

    /**
     * A slip in the design above.
     *
     * @param key key of the problem
     * @param line its line
     * @param words what the message must say, the remedy among them
     */
    record Slip(String old, String now, String key, long line, String words) {}

    static Stream<Slip> stems() {
        String ormerod = "form = \"ormerod\"\np = 0";
        String kozak = "form = \"kozak_1969\"\nb0 = 0.9\nb1 = -1.1\nb2 = ";
        String form = "form = \"form_class\"\nfc = 78";
        return Stream.of(
                new Slip("taper.PSME", "taper.PSMF", "taper.PSMF.form", 25, "did you mean PSME?"),
                new Slip("source = \"Cobbler Ridge, 2025\"\n", "", "taper.PSME.source", 24, "missing"),
                new Slip("source = \"Larsen & Hann 1985\"\n", "", "taper.PSME.bark.source", 29, "missing"),
                new Slip("form_class", "form_clas", "taper.PSME.form", 25, "did you mean \"form_class\"?"),
                new Slip(form, ormerod, "taper.PSME.p", 26, "not a number above 0"),
                new Slip(form, form.replace("78", "780"), "taper.PSME.fc", 26, "up to 100"),
                new Slip(form, form + "\na = 0.01", "taper.PSME.a", 27, "from 0.1 to 1"),
                new Slip(form, form + "\np = 1", "taper.PSME.p", 27, "no key"),
                new Slip(form, kozak + "0.3", "taper.PSME.b1", 27, "write b1 = -(b0 + b2) = -1.20000"),
                new Slip(form, kozak.replace("-1.1", "-1.9") + "1.0", "taper.PSME.b2", 28, "between -b0 and b0"),
                new Slip("a = 0.903563", "a = 1.203563", "taper.PSME.bark.a", 30, "check a, b and unit"),
                new Slip("unit = \"in\"\n", "", "taper.PSME.bark.unit", 29, "one of mm, cm"),
                new Slip("\"in\"\nsource", "\"inch\"\nsource", "taper.PSME.bark.unit", 32, "not one of mm, cm"),
                new Slip("0.903563\nb = 0.989388", "0.75", "taper.PSME.fc", 26, "fc is at most 100 times bark.a"));
    }

    static Stream<Slip> products() {
        String pulp = "lengths = [8]";
        return Stream.of(
                new Slip("rule = \"scrib", "trim = 8\nrule = \"scrib", "product.lengths", 50, "smaller logs.trim"),
                new Slip(pulp, "lengths = [0.4]", "product.lengths", 49, "not longer than its trim of 0.5"),
                new Slip(pulp, "lengths = []", "product.lengths", 49, "lengths = [16, 12]"),
                new Slip(pulp, "", "product.lengths", 47, "lengths = [16, 12]"),
                new Slip(pulp, "lengths = 8", "product.lengths", 49, "a list of numbers"),
                new Slip(pulp, "lengths = [8, \"x\"]", "product.lengths", 49, "a list of numbers"),
                new Slip(pulp, "lengths = [8, -8]", "product.lengths", 49, "whole hundredths"),
                new Slip(pulp, "lengths = [8.333]", "product.lengths", 49, "whole hundredths"),
                new Slip("min_small_end = 6", "min_small_end = 31", "product.min_small_end", 44, "max_large_end = 30"),
                new Slip("defect = 5", "defect = 101", "product.defect", 46, "from 0 to 100"),
                new Slip("defect = 5", "defect = -1", "product.defect", 46, "from 0 to 100"),
                new Slip("[\"PSME\"]", "[\"PSMF\"]", "product.species", 41, "did you mean PSME?"),
                new Slip("[\"PSME\"]", "[\"QQ\"]", "product.species", 41, "name it in [species.CODE]"),
                new Slip("[\"PSME\"]", "[\"*\"]", "product.species", 41, "is no species or group"),
                new Slip(
                        "[prices]",
                        "[[product]]\ncode = \"saw\"\nlengths = [8]\nmin_small_end = 3\n[prices]",
                        "product.code",
                        52,
                        "rename one"),
                new Slip("min_small_end = 3\n", "", "product.min_small_end", 47, "missing"));
    }

    static Stream<Slip> settings() {
        String rule = "rule = \"scribner_decimal_c\"";
        return Stream.of(
                new Slip("best_value", "best", "logs.method", 36, "one of lengths, best_value"),
                new Slip(rule, "rule = \"scribner\"", "logs.rule", 37, "scribner_formula"),
                new Slip(rule, rule + "\ndiameters = \"inch\"", "logs.diameters", 38, "nearest_inch"),
                new Slip(rule, rule + "\nlongest_piece = 1", "logs.longest_piece", 38, "2 or more"),
                new Slip(rule, rule + "\nstump = -1", "logs.stump", 38, "0 or more"),
                new Slip(rule, rule + "\ncubic = \"smalain\"", "logs.cubic", 38, "did you mean \"smalian\"?"),
                new Slip("\"best_value\"", "\"lengths\"\nwaste_step = 1", "logs.waste_step", 37, "\"best_value\""));
    }

    static Stream<Slip> prices() {
        String per = "per = \"100ft3\"";
        return Stream.of(
                new Slip("product = \"pulp\"", "product = \"pulb\"", "price.product", 62, "did you mean \"pulp\"?"),
                new Slip("product = \"pulp\"", "product = \"zzz\"", "price.product", 62, "take the price out"),
                new Slip("product = \"pulp\"", "product = \"pulp\"\nspecies = \"PSMF\"", "price.species", 63, "PSME?"),
                new Slip("amount = 20", "amount = -20", "price.amount", 63, "0 or more"),
                new Slip(per, "per = \"cord\"", "price.per", 64, "mbf, m3, ft3, 100ft3, t, ton"),
                new Slip(per, "per = \"ton\"", "price.per", 64, "[green_weight.CODE] for PSME"),
                new Slip(
                        per,
                        per + "\n[[price]]\nproduct = \"pulp\"\namount = 1\nper = \"m3\"",
                        "price.product",
                        66,
                        "take one out"),
                new Slip("currency = \"USD\"\n", "", "prices.currency", 51, "missing"),
                new Slip("source = \"made up\"\n", "", "prices.source", 51, "missing"));
    }

    @ParameterizedTest
    @MethodSource({"stems", "products", "settings", "prices"})
    void aSlipIsOneProblemOnItsLineWithTheRemedy(Slip slip) {
        onlyProblem(US.with(slip.old(), slip.now()), slip.key(), slip.line(), slip.words());
    }

    private void onlyProblem(SmallDesign design, String key, long line, String words) {
        List<Problem> problems = design.problems(folder);
        assertEquals(1, problems.size(), problems.toString());
        Problem p = problems.get(0);
        assertEquals(key + " on line " + line, p.column() + " on line " + p.row(), p.message());
        assertTrue(p.message().contains(words), p.message());
    }

    /** The design without the lines from one table on, up to another or the end. */
    private static SmallDesign without(String from, String to) {
        int start = US.text().indexOf(from);
        int end = to.isEmpty() ? US.text().length() : US.text().indexOf(to);
        return new SmallDesign(US.text().substring(0, start) + US.text().substring(end));
    }

    @Test
    void tablesThatNeedEachOtherSaySo() {
        SmallDesign noPrices = without("[prices]", "");
        onlyProblem(without("[taper", "[logs]"), "logs.taper", 24, "write [taper.CODE]");
        onlyProblem(without("[logs]", "[[product]]"), "product", 35, "[logs]");
        onlyProblem(noPrices, "logs.method", 36, "without prices write method = \"lengths\"");
        onlyProblem(without("[prices]", "[[price]]"), "price", 51, "[prices]");
        onlyProblem(without("[[price]]", ""), "prices.currency", 52, "[[price]]");
        onlyProblem(without("[taper.PSME.bark]", "[logs]"), "taper.PSME.bark", 24, "[taper.PSME.bark]");
        SmallDesign noProducts = without("[[product]]", "").with("best_value", "lengths");
        onlyProblem(noProducts, "logs.product", 35, "[[product]]");
    }
}
