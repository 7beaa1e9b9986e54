package quadmean.chart;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.Remeasure;
import quadmean.cruise.WoodUsed;
import quadmean.design.Counting;
import quadmean.design.CruiseNotes;
import quadmean.design.Design;
import quadmean.design.FollowUp;
import quadmean.design.PlanSettings;
import quadmean.design.PlotExceptions;
import quadmean.design.PlotRules;
import quadmean.design.ReadingSettings;
import quadmean.design.SheetSettings;
import quadmean.design.SimulationSettings;
import quadmean.design.SpeciesEntry;
import quadmean.design.StratumEntry;
import quadmean.design.WoodSettings;
import quadmean.estimate.ClassRow;
import quadmean.estimate.DiameterClass;
import quadmean.estimate.DiameterFit;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.Part;
import quadmean.estimate.PlotsNeeded;
import quadmean.estimate.RunningMean;
import quadmean.estimate.StandEstimate;
import quadmean.estimate.StandStatistic;
import quadmean.estimate.StandStructure;
import quadmean.estimate.Statistic;
import quadmean.height.CurveTable;
import quadmean.height.HeightSettings;
import quadmean.height.HeightedTree;
import quadmean.model.DegreesRule;
import quadmean.model.EstimateRules;
import quadmean.model.FieldHeight;
import quadmean.model.FinitePopulation;
import quadmean.model.HeightSource;
import quadmean.model.Plot;
import quadmean.model.PlotDesign;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.model.SelectionMethod;
import quadmean.model.SizeRules;
import quadmean.model.Standing;
import quadmean.model.Stratum;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.model.VolumeForm;
import quadmean.model.VolumeSpec;
import quadmean.stats.Weibull;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.TreeWood;

/**
 * An invented cruise for tests of charts and report: two strata, three species, one of them with a code that HTML must
 * escape, one row without an error. Its estimates are round numbers made up for the purpose and belong to no tally.
 */
public final class SampleCruise {
    /** A species code that would break a page if it were not escaped. */
    public static final String NASTY = "<b>&\"";

    /** Why the row without an error has none. */
    public static final String REASON = "stratum B has one plot; a standard error needs two";

    /** The volume of the whole stand (m³), its standard error and limits: t on 10 degrees of freedom taken as 2.228. */
    public static final double TOTAL_M3 = 12_345.678;

    public static final double TOTAL_SE_M3 = 1_000.25;

    private SampleCruise() {}

    /** The cruise in a unit system. */
    public static CruiseResult in(UnitSystem units) {
        List<Tree> trees = trees();
        CurveTable curves = CurveTable.fit(trees, new HeightSettings(units, units.breastHeight(), Map.of(), 8, 5));
        List<HeightedTree> heighted = trees.stream().map(curves::fill).toList();
        return result(design(units), tally(trees), curves, heighted, equations(), estimate(), remeasure(heighted));
    }

    /** A cruise of which nothing but cubic volumes was asked. */
    public static CruiseResult result(
            Design design,
            Tally tally,
            CurveTable curves,
            List<HeightedTree> trees,
            Map<String, VolumeSpec> equations,
            StandEstimate estimate,
            List<Remeasure> remeasure) {
        List<TreeWood> wood =
                trees.stream().map(t -> TreeWood.ofVolume(Double.NaN)).toList();
        return new CruiseResult(design, tally, curves, trees, wood, WoodUsed.ofVolumes(equations), estimate, remeasure);
    }

    private static List<Remeasure> remeasure(List<HeightedTree> heighted) {
        return List.of(
                new Remeasure(
                        heighted.get(0), 2.5, 120, 0.4, List.of(), List.of("distance-short: too near <the> tree")),
                new Remeasure(
                        heighted.get(1),
                        Double.NaN,
                        Double.NaN,
                        Double.NaN,
                        List.of("12 m from the centre"),
                        List.of()));
    }

    /** The cruise in US units. */
    public static CruiseResult us() {
        return in(UnitSystem.US);
    }

    /** The US cruise with another kind of plot and target, a finite population, and with logarithmic equations. */
    public static CruiseResult variant(PlotDesign plot, Attribute target) {
        CruiseResult r = us();
        Design d = r.design();
        Design other = new Design(
                d.file(),
                d.text(),
                d.sha256(),
                d.name(),
                "",
                d.units(),
                d.confidence(),
                d.targetErrorPercent(),
                target,
                d.seed(),
                List.of(d.strata().get(0)),
                plot,
                SelectionMethod.SIMPLE_RANDOM,
                FinitePopulation.CORRECT,
                DegreesRule.SATTERTHWAITE,
                d.tallies(),
                d.species(),
                d.height(),
                d.volumes(),
                Map.of(Rule.HEIGHT_OFF_CURVE, Policy.KEEP),
                d.plan(),
                d.sizes(),
                d.notes(),
                d.sheets(),
                d.counting(),
                d.exceptions(),
                d.plotRules(),
                d.wood(),
                d.estimation(),
                d.tract(),
                d.layout(),
                d.simulation(),
                d.followUp(),
                d.estate());
        VolumeSpec logarithmic = new VolumeSpec(
                "PSME",
                VolumeForm.SCHUMACHER_HALL,
                List.of(-2.5, 1.8, 1.1),
                VolumeSpec.LogBase.TEN,
                0.05,
                Unit.INCH,
                Unit.FOOT,
                Unit.CUBIC_FOOT,
                "made up",
                Standing.INVENTED);
        return result(other, r.tally(), r.curves(), r.trees(), Map.of("PSME", logarithmic), r.estimate(), List.of());
    }

    /** A cruise of two plots without a single tree. */
    public static CruiseResult empty() {
        Design design = design(UnitSystem.METRIC);
        CurveTable curves = CurveTable.fit(List.of(), new HeightSettings(UnitSystem.METRIC, 1.3, Map.of(), 8, 5));
        double nan = Double.NaN;
        EstimateRow row = new EstimateRow(
                "*",
                "*",
                Part.ALL,
                Attribute.VOLUME,
                Basis.TOTAL,
                2,
                0,
                nan,
                nan,
                nan,
                nan,
                nan,
                nan,
                "no trees were tallied");
        StandEstimate estimate = new StandEstimate(
                0.95,
                List.of(row),
                List.of(),
                StandStructure.NONE,
                List.of(new PlotsNeeded(Attribute.VOLUME, nan, 2, OptionalInt.empty(), PlotsNeeded.Verdict.UNKNOWN)),
                List.of());
        Tally tally = new Tally(
                List.of(new Plot("1", "A", List.of()), new Plot("2", "A", List.of())),
                new RowCount(2, 2, 0, 0),
                List.of());
        return result(design, tally, curves, List.of(), Map.of(), estimate, List.of());
    }

    private static Design design(UnitSystem units) {
        return new Design(
                Path.of("designs", "sample.toml"),
                "# sample\n[cruise]\nname = \"Alder Bench <draft>\"\n",
                "0123456789abcdef".repeat(4),
                "Alder Bench <draft>",
                "2024-09-12",
                units,
                0.95,
                10,
                Attribute.VOLUME,
                42,
                List.of(stratum("A", "Lower bench", 60), stratum("B", "Rim", 40)),
                new PlotDesign.Point(4.59),
                SelectionMethod.STRATIFIED_SYSTEMATIC,
                FinitePopulation.IGNORE,
                DegreesRule.PLOTS_MINUS_STRATA,
                List.of(),
                Map.of("PSME", new SpeciesEntry("PSME", "Douglas-fir", "", List.of(), null)),
                new Design.HeightEntry(units.breastHeight(), 8, 5, ReadingSettings.COMMON_PRACTICE),
                equations(),
                Map.of(),
                PlanSettings.of(OptionalDouble.empty(), PlanSettings.Pilot.NONE, FinitePopulation.IGNORE),
                SizeRules.ofWidth(5.08),
                CruiseNotes.NONE,
                SheetSettings.usual(units),
                Counting.STANDARD,
                PlotExceptions.NONE,
                PlotRules.STANDARD,
                WoodSettings.NONE,
                EstimateRules.STANDARD,
                Optional.empty(),
                Optional.empty(),
                SimulationSettings.NONE,
                FollowUp.NONE,
                Optional.empty());
    }

    private static StratumEntry stratum(String code, String name, double areaHa) {
        return StratumEntry.of(new Stratum(code, name, areaHa), List.of());
    }

    private static Map<String, VolumeSpec> equations() {
        return Map.of(
                "PSME",
                equation("PSME", Standing.FROM_MEMORY),
                "ABGR",
                equation("*", Standing.VERIFIED),
                NASTY,
                equation("*", Standing.VERIFIED));
    }

    private static VolumeSpec equation(String code, Standing standing) {
        return new VolumeSpec(
                code,
                VolumeForm.COMBINED_VARIABLE,
                List.of(0.0, 0.0025),
                VolumeSpec.LogBase.TEN,
                0,
                Unit.INCH,
                Unit.FOOT,
                Unit.CUBIC_FOOT,
                "made up for a test & nothing else",
                standing);
    }

    /** Heights near 1.3 + d²/(2 + 0.15 d)² with a little scatter; every third tree without one. */
    private static List<Tree> trees() {
        List<Tree> trees = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            String species = i % 10 == 9 ? NASTY : i % 3 == 0 ? "ABGR" : "PSME";
            double dbh = 15 + i * 1.1;
            double height = 1.3 + Math.pow(dbh / (2 + (species.equals("ABGR") ? 0.17 : 0.15) * dbh), 2) + i % 5 - 2;
            FieldHeight field = i % 3 == 1 || i > 57
                    ? null
                    : new FieldHeight(height, i % 2 == 0 ? HeightSource.MEASURED : HeightSource.READING, "HT", "x");
            trees.add(new Tree("tally.csv", i + 2, "" + (1 + i / 5), "" + (1 + i % 5), species, dbh, field));
        }
        return trees;
    }

    private static Tally tally(List<Tree> trees) {
        List<Plot> plots = new ArrayList<>();
        for (int p = 0; p < 12; p++) {
            plots.add(new Plot("" + (p + 1), p < 7 ? "A" : "B", trees.subList(5 * p, 5 * p + 5)));
        }
        return new Tally(
                plots,
                new RowCount(62, 60, 2, 1),
                List.of(
                        new Problem("tally.csv", 62, "DBH", "-3", Rule.DBH_IMPOSSIBLE, Policy.DROP, "dbh is -3"),
                        new Problem(
                                "tally.csv", 63, "SP", "<i>", Rule.SPECIES_UNKNOWN, Policy.DROP, "species <i> unknown"),
                        new Problem("tally.csv", 7, "HT", "90", Rule.HEIGHT_OFF_CURVE, Policy.KEEP, "far off, 9 sd")));
    }

    private static StandEstimate estimate() {
        List<EstimateRow> rows = new ArrayList<>();
        rows.add(row("*", "*", Basis.TOTAL, TOTAL_M3, TOTAL_SE_M3));
        rows.add(row("*", "*", Basis.PER_AREA, TOTAL_M3 / 100, TOTAL_SE_M3 / 100));
        rows.add(row("*", "PSME", Basis.PER_AREA, 80.5, 9.1));
        rows.add(row("*", "ABGR", Basis.PER_AREA, 30.25, 6.5));
        rows.add(row("*", NASTY, Basis.PER_AREA, 12.7, 4.75));
        rows.add(row("*", "PSME", Basis.TOTAL, 8050, 910));
        rows.add(row("A", "*", Basis.PER_AREA, 140.2, 12.5));
        rows.add(row("A", "PSME", Basis.PER_AREA, 90.2, 9.5));
        double nan = Double.NaN;
        rows.add(new EstimateRow(
                "B", "*", Part.ALL, Attribute.VOLUME, Basis.PER_AREA, 1, 0, 98.4, nan, nan, nan, nan, nan, REASON));
        rows.add(new EstimateRow(
                "*", "*", Part.ALL, Attribute.TREES, Basis.PER_AREA, 12, 10, 310.4, 22, 24.5, 261.4, 359.4, 15.8, ""));
        rows.add(new EstimateRow(
                "*",
                "*",
                Part.ALL,
                Attribute.QUADRATIC_MEAN_DIAMETER,
                Basis.RATIO,
                12,
                10,
                31.72,
                0.8,
                8.7,
                29.94,
                33.5,
                5.6,
                ""));
        return new StandEstimate(
                0.95,
                rows,
                running(),
                structure(),
                List.of(
                        new PlotsNeeded(Attribute.VOLUME, 18.05, 12, OptionalInt.of(38), PlotsNeeded.Verdict.MISSED),
                        new PlotsNeeded(Attribute.TREES, 15.8, 12, OptionalInt.of(29), PlotsNeeded.Verdict.MISSED)),
                List.of("Satterthwaite was not asked for & not used."));
    }

    private static EstimateRow row(String stratum, String species, Basis basis, double mean, double se) {
        double half = 2.228 * se;
        return new EstimateRow(
                stratum,
                species,
                Part.ALL,
                Attribute.VOLUME,
                basis,
                12,
                10,
                mean,
                se,
                28.1,
                mean - half,
                mean + half,
                100 * half / mean,
                "");
    }

    private static List<RunningMean> running() {
        List<RunningMean> running = new ArrayList<>();
        running.add(new RunningMean(1, "1", Double.NaN, Double.NaN, Double.NaN));
        for (int n = 2; n <= 12; n++) {
            double mean = 123.45678 + 40 * Math.cos(n - 12) / n - 40.0 / 12 + (12 - n) / 3.6;
            double half = 22.28 * Math.sqrt(12.0 / n) * (n < 4 ? 3 : 1);
            boolean known = n > 3;
            running.add(new RunningMean(
                    n, "" + n, mean, known ? mean - half : Double.NaN, known ? mean + half : Double.NaN));
        }
        return running;
    }

    /** Trees by class and species, and of all species; statistics with an error and without. */
    private static StandStructure structure() {
        List<ClassRow> classes = new ArrayList<>();
        for (int i = 3; i < 16; i++) {
            double firs = i == 12 ? 0 : 60.0 / (i - 2);
            double grand = i < 9 ? 12 - i : 0;
            double nasty = i == 12 ? 0 : i % 4;
            for (Basis basis : List.of(Basis.PER_AREA, Basis.TOTAL)) {
                double k = basis == Basis.TOTAL ? 100 : 1;
                DiameterClass size = new DiameterClass(5.08 * i, 5.08 * (i + 1));
                classes.add(new ClassRow(size, trees(basis, "*", k * (firs + grand + nasty))));
                classes.add(new ClassRow(size, trees(basis, "PSME", k * firs)));
                classes.add(new ClassRow(size, trees(basis, "ABGR", k * grand)));
                classes.add(new ClassRow(size, trees(basis, NASTY, k * nasty)));
            }
        }
        double nan = Double.NaN;
        return new StandStructure(
                classes,
                List.of(
                        new StandStatistic(
                                "*", Statistic.LOREY_HEIGHT, 12, 10, 21.4, 0.6, 20.06, 22.74, 6.2, "Σwgh/Σwg", ""),
                        new StandStatistic(
                                "*",
                                Statistic.RELATIVE_DENSITY,
                                12,
                                10,
                                2.124233,
                                nan,
                                nan,
                                nan,
                                nan,
                                "G/√QMD",
                                "no error <here>")),
                Optional.of(new DiameterFit(new Weibull(0, 35, 2.4), 10, 250)));
    }

    /** Trees per hectare of one class. */
    static ClassRow trees(double lowerCm, double upperCm, String species, double treesPerHa) {
        return new ClassRow(new DiameterClass(lowerCm, upperCm), trees(Basis.PER_AREA, species, treesPerHa));
    }

    /** Trees with a standard error of a quarter of them. */
    private static EstimateRow trees(Basis basis, String species, double n) {
        double half = 2.228 * n / 4;
        return new EstimateRow(
                "*", species, Part.ALL, Attribute.TREES, basis, 12, 10, n, n / 4, 86.6, n - half, n + half, 55.7, "");
    }

    /** Nothing but classes. */
    static StandStructure structure(List<ClassRow> classes) {
        return new StandStructure(classes, List.of(), Optional.empty());
    }
}
