package quadmean.cruise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Part;
import quadmean.height.FillingCurves;
import quadmean.height.SpeciesCurve;
import quadmean.model.FillingCurve;
import quadmean.model.Progress;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.MeanEstimate;
import quadmean.stats.StratifiedMean;
import quadmean.stats.StratumSample;
import quadmean.support.FormulaEstate;
import quadmean.support.FormulaEstate.Row;
import quadmean.support.ReferenceFiles;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** The estimate of an estate is that of its stands one by one, and of a stratified sample whose strata are the stands. */
class EstateTest {
    private static final List<Attribute> ATTRIBUTES = List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME);

    @TempDir
    Path folder;

    private EstateResult run(FormulaEstate estate, String more) throws IOException {
        Files.writeString(folder.resolve("t.csv"), FormulaEstate.HEADER + String.join("\n", estate.lines()) + "\n");
        Keeping keeping = new Keeping(0);
        Design design = FormulaEstate.estate(folder, "t.csv", "own", more);
        return Estate.run(design, 2, keeping, Progress.SILENT).orElseThrow(() -> new AssertionError(keeping.problems));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void eachStandIsEstimatedAsAlone(int seed) throws IOException {
        FormulaEstate estate = new FormulaEstate(seed, 1 + seed);
        List<CruiseResult> alone = new ArrayList<>();
        List<FillingCurves> curves = new ArrayList<>();
        for (int s = 1; s <= FormulaEstate.STANDS; s++) {
            CruiseRun run = Cruise.run(estate.stand(folder, s));
            CruiseResult result = run.result();
            assertTrue(result != null, "stand " + s + ": " + run.tally().problems());
            alone.add(result);
            curves.add(FillingCurves.of(result.curves(), TreeChecks.wholeTrees(run.tally())));
        }
        Files.writeString(folder.resolve("curves.csv"), text(curves));
        EstateResult all = run(estate, "curves = \"curves.csv\"\n");
        int compared = 0;
        for (int i = 0; i < FormulaEstate.STANDS; i++) {
            List<String> species = new ArrayList<>(all.stands().speciesOf(i));
            species.add(EstimateRow.ALL);
            for (String s : species) {
                for (EstimateRow row : all.stands().rows(i, s)) {
                    compare(
                            row,
                            FormulaEstate.code(i + 1),
                            find(alone.get(i).estimate().rows(), s, row));
                    compared++;
                }
            }
        }
        assertTrue(compared > 12 * 2 * 7, compared + " numbers");
        assertWhole(estate, all, curves);
    }

    private static EstimateRow find(List<EstimateRow> rows, String species, EstimateRow like) {
        return rows.stream()
                .filter(r -> r.stratum().equals(EstimateRow.ALL) && r.species().equals(species))
                .filter(r -> r.part().equals(Part.ALL))
                .filter(r -> r.attribute() == like.attribute() && r.basis() == like.basis())
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row like " + like));
    }

    private static void compare(EstimateRow row, String stand, EstimateRow alone) {
        String what = stand + " " + row.species() + " " + row.attribute() + " " + row.basis();
        assertEquals(alone.n(), row.n(), what);
        near(alone.mean(), row.mean(), what + " mean");
        near(alone.se(), row.se(), what + " se");
        near(alone.df(), row.df(), what + " df");
        near(alone.lower(), row.lower(), what + " lower");
        near(alone.upper(), row.upper(), what + " upper");
        near(alone.cvPercent(), row.cvPercent(), what + " cv");
    }

    private static void near(double expected, double actual, String what) {
        if (Double.isNaN(expected)) {
            assertEquals(expected, actual, what);
        } else {
            Tolerance.ROUNDING.check(expected, actual, what);
        }
    }

    private static String text(List<FillingCurves> curves) {
        List<String> lines = new ArrayList<>(List.of(String.join(",", FillingCurve.COLUMNS)));
        for (int i = 0; i < curves.size(); i++) {
            String region = FormulaEstate.code(i + 1);
            for (FillingCurve c : curves.get(i).curves()) {
                String parameters = IntStream.range(0, 3)
                        .mapToObj(k -> k < c.parameters().length ? Double.toString(c.parameters()[k]) : "")
                        .collect(Collectors.joining(","));
                lines.add(String.join(
                        ",",
                        region,
                        c.species(),
                        c.source().id(),
                        c.form().id(),
                        c.units().id(),
                        Double.toString(c.breastHeight()),
                        Double.toString(c.ratio()),
                        parameters,
                        Integer.toString(c.heights()),
                        Double.isNaN(c.scatterM()) ? "" : Double.toString(c.scatterM()),
                        Double.toString(c.minDbhCm()),
                        Double.toString(c.maxDbhCm())));
            }
        }
        return String.join("\n", lines) + "\n";
    }

    /** Values of plots by plain loops: trees, basal area and volume per hectare. */
    private static double[] value(FormulaEstate estate, FillingCurves curves, int stand, int plot, String species) {
        double[] sums = new double[3];
        for (Row tree : estate.trees(stand, plot)) {
            if (species.equals(EstimateRow.ALL) || species.equals(tree.species())) {
                double height = tree.height();
                if (Double.isNaN(height)) {
                    height = onCurve(curves, tree);
                }
                sums[0] += 1 / FormulaEstate.PLOT_HA;
                sums[1] += Math.PI / 40_000 * tree.dbh() * tree.dbh() / FormulaEstate.PLOT_HA;
                sums[2] += FormulaEstate.volume(tree.species(), tree.dbh(), height) / FormulaEstate.PLOT_HA;
            }
        }
        return sums;
    }

    /** NaN where there is no curve, neither of the species nor of all. */
    private static double onCurve(FillingCurves curves, Row tree) {
        return Stream.of(tree.species(), SpeciesCurve.POOLED)
                .flatMap(s -> curves.curves().stream().filter(c -> c.species().equals(s)))
                .mapToDouble(c -> FillingCurves.heightMetres(c, tree.dbh()))
                .findFirst()
                .orElse(Double.NaN);
    }

    private static void assertWhole(FormulaEstate estate, EstateResult all, List<FillingCurves> curves) {
        for (String stratum : List.of(EstimateRow.ALL, "north", "south")) {
            List<Integer> stands = IntStream.rangeClosed(1, FormulaEstate.STANDS)
                    .filter(s -> stratum.equals(EstimateRow.ALL) || stratum.equals(FormulaEstate.stratum(s)))
                    .boxed()
                    .toList();
            double area = stands.stream().mapToDouble(FormulaEstate::areaHa).sum();
            for (String species : List.of(EstimateRow.ALL, "PSME", "TSHE", "ABGR")) {
                for (int a = 0; a < ATTRIBUTES.size(); a++) {
                    int at = a;
                    List<StratumSample> samples = stands.stream()
                            .map(s -> new StratumSample(
                                    FormulaEstate.areaHa(s) / area,
                                    Double.POSITIVE_INFINITY,
                                    IntStream.rangeClosed(1, FormulaEstate.plots(s))
                                            .mapToDouble(p -> value(estate, curves.get(s - 1), s, p, species)[at])
                                            .toArray()))
                            .toList();
                    MeanEstimate expected = StratifiedMean.estimate(samples, DegreesOfFreedom.UNITS_MINUS_STRATA);
                    String what = stratum + " " + species + " " + ATTRIBUTES.get(a);
                    check(expected, row(all, stratum, species, ATTRIBUTES.get(a), Basis.PER_AREA), what);
                    check(expected.times(area), row(all, stratum, species, ATTRIBUTES.get(a), Basis.TOTAL), what);
                }
            }
        }
    }

    private static void check(MeanEstimate expected, EstimateRow row, String what) {
        assertEquals(expected.n(), row.n(), what);
        near(expected.mean(), row.mean(), what + " mean");
        near(expected.se(), row.se(), what + " se");
        near(expected.hasError() ? expected.df() : Double.NaN, row.df(), what + " df");
        near(expected.interval(0.95).lower(), row.lower(), what + " lower");
        near(expected.interval(0.95).upper(), row.upper(), what + " upper");
    }

    private static EstimateRow row(EstateResult all, String stratum, String species, Attribute attribute, Basis basis) {
        return all.estimate().rows().stream()
                .filter(r -> r.stratum().equals(stratum) && r.species().equals(species))
                .filter(r -> r.attribute() == attribute && r.basis() == basis)
                .findFirst()
                .orElseThrow(() -> new AssertionError(stratum + " " + species + " " + attribute));
    }

    /** estate.json: R 4.2.2, survey 4.1-1, script estate.R. */
    @Test
    void estateIsThatOfSurvey() throws IOException {
        EstateResult all = run(new FormulaEstate(1, 1), "");
        JsonNode reference = ReferenceFiles.json("estate.json");
        assertEquals(12, reference.size());
        reference.properties().forEach(e -> {
            String[] key = e.getKey().split(" ");
            JsonNode of = e.getValue();
            for (Attribute attribute : ATTRIBUTES) {
                JsonNode number = of.get(attribute.name().toLowerCase(Locale.ROOT));
                EstimateRow perHa = row(all, key[0], key[1], attribute, Basis.PER_AREA);
                EstimateRow total = row(all, key[0], key[1], attribute, Basis.TOTAL);
                String what = e.getKey() + " " + attribute;
                Tolerance.R_SCRIPT.check(ReferenceFiles.number(number.get("mean")), perHa.mean(), what);
                Tolerance.R_SCRIPT.check(ReferenceFiles.number(number.get("se")), perHa.se(), what + " se");
                Tolerance.R_SCRIPT.check(ReferenceFiles.number(number.get("total")), total.mean(), what + " total");
                Tolerance.R_SCRIPT.check(ReferenceFiles.number(number.get("total_se")), total.se(), what + " total se");
                assertEquals(ReferenceFiles.number(of.get("n")), perHa.n());
                assertEquals(ReferenceFiles.number(of.get("df")), perHa.df());
            }
            EstimateRow diameter = row(all, key[0], key[1], Attribute.QUADRATIC_MEAN_DIAMETER, Basis.RATIO);
            Tolerance.R_SCRIPT.check(
                    ReferenceFiles.number(of.get("diameter").get("mean")), diameter.mean(), e.getKey());
            Tolerance.R_SCRIPT.check(
                    ReferenceFiles.number(of.get("diameter").get("se")), diameter.se(), e.getKey() + " diameter se");
        });
    }
}
