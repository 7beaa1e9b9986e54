package quadmean.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quadmean.support.ReferenceFiles.csv;
import static quadmean.support.ReferenceFiles.json;
import static quadmean.support.ReferenceFiles.number;

import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import quadmean.design.EquationLibrary;
import quadmean.model.BiomassSpec;
import quadmean.model.Standing;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.model.VolumeSpec.LogBase;
import quadmean.support.Tolerance;
import quadmean.units.Unit;

/**
 * Each equation of the library against check values from outside. Where its coefficients are from memory the check values
 * follow from the coefficients: they hold the form, the units and the typing, and say nothing about the digits.
 */
class PublishedEquationsTest {
    private static final double[][] EASTERN = {{6, 40}, {10, 60}, {14, 75}};
    private static final double[][] WESTERN = {{10, 60}, {14, 85}, {20, 110}};
    private static final double[][] CHERRY = {{10, 70}, {15, 80}, {20, 85}};

    /**
     * A row of volume-equations.csv and the equation of the library that it checks.
     *
     * @param name name in the library
     * @param sizes dbh (in) and height (ft) of the three check values
     * @param decimals decimals printed (ft³)
     */
    record Check(String name, NamedCsvRecord row, double[][] sizes, int decimals) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Check> volumes() {
        return csv("volume-equations.csv").stream()
                .map(PublishedEquationsTest::check)
                .toList();
    }

    private static Check check(NamedCsvRecord row) {
        String source = row.getField("source");
        String species = row.getField("species");
        if (source.startsWith("Honer")) {
            return new Check(inCollection("honer-1967", species), row, EASTERN, 2);
        } else if (source.startsWith("Browne")) {
            return new Check(inCollection("browne-1962", species), row, WESTERN, 2);
        } else if (source.startsWith("Brackett")) {
            return new Check("brackett-1973/douglas-fir", row, WESTERN, 2);
        } else if (source.startsWith("Burkhart")) {
            return new Check("burkhart-1977/" + species.replace(' ', '-'), row, EASTERN, 2);
        }
        String form = species.contains("log") ? "schumacher-hall" : "combined-variable";
        return new Check("black-cherry-1976/" + form, row, CHERRY, 4);
    }

    private static String inCollection(String collection, String species) {
        return EquationLibrary.shipped().entries().stream()
                .filter(e ->
                        e.name().startsWith(collection + "/") && e.species().equals(species))
                .findFirst()
                .orElseThrow(() -> new AssertionError(collection + " lacks " + species))
                .name();
    }

    @ParameterizedTest
    @MethodSource("volumes")
    void volumesGiveTheirCheckValues(Check check) {
        TreeEquation equation = TreeEquation.of(uncorrected(volume(check.name())));
        for (int i = 0; i < 3; i++) {
            double[] size = check.sizes()[i];
            double expected = number(check.row(), "check" + (i + 1) + "_V");
            Tolerance.printed(check.decimals()).check(expected, cubicFeet(equation, size[0], size[1]), check.name());
        }
        String status = check.row().getField("status");
        boolean verified = volume(check.name()).standing() == Standing.VERIFIED;
        assertEquals(status.startsWith("confirmed"), verified, status);
        assertTrue(verified || status.startsWith("memory"), status);
    }

    /** The published check values of log equations are without the correction of the back-transform. */
    private static VolumeSpec uncorrected(VolumeSpec v) {
        return new VolumeSpec(
                v.code(),
                v.form(),
                v.coefficients(),
                v.table(),
                v.logBase(),
                0,
                v.dbhUnit(),
                v.heightUnit(),
                v.volumeUnit(),
                v.range(),
                v.provenance(),
                v.library());
    }

    /** Mesavage and Girard 1946 by the polynomials of Wiant 1986, form class 78 (formulary 2.3, from memory). */
    @ParameterizedTest
    @CsvSource({"12, 1, 29.0, 46.9, 56.1", "16, 2, 113.6, 156.5, 177.0", "20, 3, 289.7, 358.6, 395.0"})
    void boardFeetByFormClass(double inches, double logs, double doyle, double scribner, double international) {
        double[] expected = {doyle, scribner, international};
        String[] rules = {"doyle", "scribner", "international"};
        for (int i = 0; i < 3; i++) {
            VolumeSpec spec = volume("wiant-1986/" + rules[i]);
            double cm = Unit.INCH.convert(inches, Unit.CENTIMETRE);
            double boardFeet = TreeEquation.of(spec).volume(cm, Double.NaN, logs);
            Tolerance.printed(1).check(expected[i], boardFeet, rules[i]);
            double other = TreeEquation.of(spec.with("form_class", 80)).volume(cm, Double.NaN, logs);
            Tolerance.ROUNDING.check(1.06, other / boardFeet, "two points of form class at 3 percent each");
            assertEquals(Standing.FROM_MEMORY, spec.standing());
        }
    }

    static List<NamedCsvRecord> biomass() {
        return csv("biomass.csv").stream()
                .filter(r -> r.getField("component").startsWith("total"))
                .toList();
    }

    /** Jenkins and others 2003, Lambert and others 2005 (sum of four parts): coefficients from memory. */
    @ParameterizedTest
    @MethodSource("biomass")
    void biomassGivesItsCheckValues(NamedCsvRecord row) {
        String collection = row.getField("source").startsWith("Jenkins") ? "jenkins-2003" : "lambert-2005";
        BiomassSpec spec = biomass(inCollection(collection, row.getField("species_or_group")));
        for (int dbh : new int[] {10, 20, 30}) {
            double expected = number(row, "at_" + dbh + "cm");
            Tolerance.printed(2).check(expected, BiomassEquation.of(spec).dryKg(dbh), row.toString());
        }
        String largest = row.getField("max_dbh_cm");
        assertEquals(
                largest.isEmpty() ? Double.NaN : Double.parseDouble(largest),
                spec.range().maxDbhCm());
        assertTrue(row.getField("status").startsWith("memory"));
        assertEquals(Standing.FROM_MEMORY, spec.provenance().standing());
    }

    /** Taken for inches, a dbh in centimetres would weigh 2.54^b1 times as much (algebra of the form). */
    @Test
    void biomassTakesCentimetres() {
        BiomassSpec spec = biomass("jenkins-2003/douglas-fir");
        BiomassEquation equation = BiomassEquation.of(spec);
        Tolerance.printed(2).check(162.34, equation.dryKg(20), "20 cm, the printed value (kg)");
        double slip = equation.dryKg(Unit.INCH.convert(20, Unit.CENTIMETRE)) / equation.dryKg(20);
        Tolerance.ROUNDING.check(Math.pow(2.54, spec.coefficients().get(1)), slip, "20 in over 20 cm");
        assertEquals(Double.NaN, equation.dryKg(Double.NaN));
        assertEquals(Double.NaN, equation.dryKg(0));
    }

    @Test
    void everyEquationOfTheLibraryHasACheckValue() {
        Set<String> checked = new TreeSet<>();
        volumes().forEach(c -> checked.add(c.name()));
        biomass()
                .forEach(r -> checked.add(inCollection(
                        r.getField("source").startsWith("Jenkins") ? "jenkins-2003" : "lambert-2005",
                        r.getField("species_or_group"))));
        Stream.of("doyle", "scribner", "international").forEach(r -> checked.add("wiant-1986/" + r));
        Stream.of("schumacher-hall", "combined-variable", "combined-variable-weighted")
                .forEach(f -> checked.add("red-oak-1958/" + f));
        Set<String> names = new TreeSet<>();
        EquationLibrary.shipped().entries().forEach(e -> names.add(e.name()));
        assertEquals(names, checked);
    }

    /** Honer in metric is a change of units alone: no swap of breast heights, no other fit. */
    @ParameterizedTest
    @MethodSource("honer")
    void honerMetricIsTheImperialFormInOtherUnits(VolumeSpec imperial) {
        TreeEquation metric = TreeEquation.of(metric(imperial));
        for (double dbhCm : new double[] {8, 25.4, 60}) {
            for (double heightM : new double[] {6, 18.288, 30}) {
                double expected = TreeEquation.of(imperial).volumeM3(dbhCm, heightM);
                Tolerance.ROUNDING.check(expected, metric.volumeM3(dbhCm, heightM), imperial.library());
            }
        }
    }

    static List<VolumeSpec> honer() {
        return EquationLibrary.shipped().search("honer-1967/").stream()
                .map(e -> (VolumeSpec) e.equation())
                .toList();
    }

    /** check-values.csv VOL1 (algebra): black spruce of 25.4 cm and 18.288 m has 0.39637 m³, within 2e-5. */
    @Test
    void honerMetricBlackSpruce() {
        VolumeSpec spec = metric(volume("honer-1967/black-spruce"));
        double m3 = TreeEquation.of(spec).volumeM3(25.4, 18.288);
        Tolerance.absolute("as stated with the value", 2e-5).check(0.39637, m3, "m³");
    }

    private static VolumeSpec metric(VolumeSpec imperial) {
        return new VolumeSpec(
                "X",
                VolumeForm.HONER_METRIC,
                imperial.coefficients(),
                LogBase.E,
                0,
                Unit.CENTIMETRE,
                Unit.METRE,
                Unit.CUBIC_METRE,
                imperial.source(),
                imperial.standing());
    }

    /** R's fits of the 236 red oaks (redoak.json, script redoak.R), and the same fits made here from redoak.csv. */
    @Test
    void redOakIsTheFitToItsData() {
        List<NamedCsvRecord> trees = csv("redoak.csv");
        JsonNode r = json("redoak.json");
        double[][] combined = combined(trees);
        checkFit("red-oak-1958/schumacher-hall", r.get("schumacher_hall"), logs(trees));
        checkFit("red-oak-1958/combined-variable", r.get("combined_variable"), combined);
        checkFit("red-oak-1958/combined-variable-weighted", r.get("combined_variable_weighted"), weighted(combined));
        Tolerance.R_SCRIPT.check(
                number(r.get("schumacher_hall").get("sigma")),
                volume("red-oak-1958/schumacher-hall").residualSd(),
                "residual standard deviation");
        checkRange(trees, "red-oak-1958/schumacher-hall");
    }

    private static void checkFit(String name, JsonNode r, double[][] data) {
        double[] library = coefficients(name);
        int i = 0;
        for (JsonNode term : r) {
            if (term.has("estimate")) {
                Tolerance.R_SCRIPT.check(number(term.get("estimate")), library[i++], name + " in R");
            }
        }
        assertEquals(library.length, i);
        Tolerance.FIT.check(refit(data).estimateRegressionParameters(), library, name);
    }

    /** The library prints nine or ten digits of the fits to R's data set trees, and five of the residual deviation. */
    @Test
    void blackCherryIsTheFitToItsData() {
        List<NamedCsvRecord> trees = csv("blackcherry.csv");
        OLSMultipleLinearRegression log = refit(logs(trees));
        double[] logarithmic = log.estimateRegressionParameters();
        Tolerance nine = Tolerance.printed(9);
        nine.check(logarithmic, coefficients("black-cherry-1976/schumacher-hall"), "log regression");
        double sd = volume("black-cherry-1976/schumacher-hall").residualSd();
        Tolerance.printed(6).check(log.estimateRegressionStandardError(), sd, "residual standard deviation");
        double[] combined = refit(combined(trees)).estimateRegressionParameters();
        nine.check(combined, coefficients("black-cherry-1976/combined-variable"), "combined variable");
        checkRange(trees, "black-cherry-1976/combined-variable");
    }

    private static void checkRange(List<NamedCsvRecord> trees, String name) {
        double[] d =
                trees.stream().mapToDouble(t -> number(t, "dbh_in")).sorted().toArray();
        double[] h =
                trees.stream().mapToDouble(t -> number(t, "height_ft")).sorted().toArray();
        VolumeSpec spec = volume(name);
        double[] found = {
            Unit.CENTIMETRE.convert(spec.range().minDbhCm(), Unit.INCH),
            Unit.CENTIMETRE.convert(spec.range().maxDbhCm(), Unit.INCH),
            Unit.METRE.convert(spec.range().minHeightM(), Unit.FOOT),
            Unit.METRE.convert(spec.range().maxHeightM(), Unit.FOOT)
        };
        Tolerance.ROUNDING.check(new double[] {d[0], d[d.length - 1], h[0], h[h.length - 1]}, found, name);
    }

    /** Rows of ln V, ln D, ln H. */
    private static double[][] logs(List<NamedCsvRecord> trees) {
        return trees.stream()
                .map(t -> new double[] {
                    Math.log(number(t, "volume_ft3")),
                    1,
                    Math.log(number(t, "dbh_in")),
                    Math.log(number(t, "height_ft"))
                })
                .toArray(double[][]::new);
    }

    /** Rows of V, 1, D²H. */
    private static double[][] combined(List<NamedCsvRecord> trees) {
        return trees.stream()
                .map(t -> new double[] {
                    number(t, "volume_ft3"), 1, Math.pow(number(t, "dbh_in"), 2) * number(t, "height_ft")
                })
                .toArray(double[][]::new);
    }

    /** The same divided by D²H: the weight is 1/(D²H)². */
    private static double[][] weighted(double[][] combined) {
        return Stream.of(combined)
                .map(row -> new double[] {row[0] / row[2], row[1] / row[2], 1})
                .toArray(double[][]::new);
    }

    /** Least squares of the first column on all others, by another library than the program's own. */
    private static OLSMultipleLinearRegression refit(double[][] rows) {
        OLSMultipleLinearRegression ols = new OLSMultipleLinearRegression();
        ols.setNoIntercept(true);
        ols.newSampleData(
                Stream.of(rows).mapToDouble(r -> r[0]).toArray(),
                Stream.of(rows)
                        .map(r -> java.util.Arrays.copyOfRange(r, 1, r.length))
                        .toArray(double[][]::new));
        return ols;
    }

    private static double[] coefficients(String name) {
        return volume(name).coefficients().stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private static VolumeSpec volume(String name) {
        return (VolumeSpec) EquationLibrary.shipped().find(name).orElseThrow().equation();
    }

    private static BiomassSpec biomass(String name) {
        return (BiomassSpec) EquationLibrary.shipped().find(name).orElseThrow().equation();
    }

    private static double cubicFeet(TreeEquation equation, double inches, double feet) {
        double m3 = equation.volumeM3(Unit.INCH.convert(inches, Unit.CENTIMETRE), Unit.FOOT.convert(feet, Unit.METRE));
        return Unit.CUBIC_METRE.convert(m3, Unit.CUBIC_FOOT);
    }
}
