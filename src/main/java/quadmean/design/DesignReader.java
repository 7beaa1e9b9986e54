package quadmean.design;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import quadmean.model.DegreesRule;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.model.Rule;
import quadmean.model.SelectionMethod;
import quadmean.model.VolumeSpec;
import quadmean.units.Attribute;
import quadmean.units.UnitSystem;

/** Reads a design file: every key is documented in {@code designs/README.md}. */
public final class DesignReader {
    private static final List<Attribute> TARGETS = Stream.of(Attribute.values())
            .filter(a -> a != Attribute.QUADRATIC_MEAN_DIAMETER)
            .toList();
    /** A design is a page or a few; beyond this the file is something else. */
    private static final long LARGEST_BYTES = 1_000_000;

    static final double DEFAULT_CONFIDENCE = 0.95;
    private static final double DEFAULT_TARGET = 10;

    private DesignReader() {}

    /**
     * Reads a design and lists everything that is wrong with it.
     *
     * @throws IOException if the file cannot be read
     */
    public static DesignReading read(Path file) throws IOException {
        ProblemLog log = new ProblemLog(file.getFileName().toString());
        if (Files.size(file) > LARGEST_BYTES) {
            return noDesign(log, "the file is larger than 1 MB: this is no design");
        }
        byte[] bytes = Files.readAllBytes(file);
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(java.nio.ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException notText) {
            return noDesign(log, "the file is not text in UTF-8");
        }
        TomlParseResult toml;
        try {
            toml = Toml.parse(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (StackOverflowError e) {
            return noDesign(log, "lists or tables lie too deep in one another");
        }
        if (toml.hasErrors()) {
            toml.errors()
                    .forEach(e -> log.add(
                            Rule.DESIGN_SYNTAX, e.position(), "", "", firstSentence(String.valueOf(e.getMessage()))));
            return new DesignReading(null, log.problems());
        }
        Design design = parse(Section.root(toml, log), file, text, hash(bytes));
        return new DesignReading(log.problems().isEmpty() ? design : null, log.problems());
    }

    private static DesignReading noDesign(ProblemLog log, String detail) {
        log.add(Rule.DESIGN_SYNTAX, TomlPosition.positionAt(1, 1), "", "", detail);
        return new DesignReading(null, log.problems());
    }

    private static Design parse(Section root, Path file, String text, String hash) {
        Optional<Long> schema = root.whole("schema");
        if (schema.isEmpty() || schema.get() != 1) {
            root.problem(
                    Rule.DESIGN_VALUE, "schema", schema.map(String::valueOf).orElse(""), "write schema = 1");
        }
        Section cruise = root.requiredTable("cruise");
        Section selection = root.table("selection");
        UnitSystem units = cruise.requiredChoice("units", Options.of(UnitSystem.values(), UnitSystem::id))
                .orElse(UnitSystem.METRIC);
        SelectionMethod method = selection
                .choice("method", Options.of(SelectionMethod.values(), SelectionMethod::id))
                .orElse(SelectionMethod.SIMPLE_RANDOM);
        Optional<EstateSettings> estate = EstateParser.parse(root, file, units);
        List<StratumEntry> strata = estate.isPresent()
                ? EstateParser.noStrata()
                : StrataParser.parse(root, cruise, selection, units, method);
        Map<String, SpeciesEntry> species = SpeciesParser.parse(root);
        Map<String, VolumeSpec> volumes = VolumeParser.parse(root, species);
        Attribute target = cruise.choice("target_attribute", Options.of(TARGETS, Attribute::id))
                .orElse(volumes.isEmpty() ? Attribute.BASAL_AREA : Attribute.VOLUME);
        WoodSettings wood = WoodParser.parse(root, species, units);
        checkTarget(cruise, target, volumes, wood);
        FinitePopulation finite = PlotParser.finitePopulation(selection, "finite_population", root);
        Section output = root.table("output");
        List<TallyFile> tallies = TallyParser.parse(root, file);
        SheetSettings sheets = SheetParser.parse(output, units);
        Design design = new Design(
                file,
                text,
                hash,
                cruise.requiredText("name"),
                cruise.text("date").orElse(""),
                units,
                cruise.number("confidence", Range.CONFIDENCE, DEFAULT_CONFIDENCE),
                cruise.number("target_error", Range.POSITIVE, DEFAULT_TARGET),
                target,
                cruise.whole("seed").orElse(1L),
                strata,
                PlotParser.parse(root, units),
                method,
                finite,
                selection
                        .choice("degrees_of_freedom", Options.of(DegreesRule.values(), DegreesRule::id))
                        .orElse(DegreesRule.PLOTS_MINUS_STRATA),
                tallies,
                species,
                HeightParser.parse(root, units),
                volumes,
                EstateParser.policies(PolicyParser.parse(root), estate.isPresent()),
                PlanParser.parse(root, cruise, estimated(volumes, wood), file, units, sheets.heightEvery()),
                FieldParser.sizes(output, units),
                FieldParser.notes(cruise),
                sheets,
                FieldParser.counting(output, cruise, units),
                FieldParser.exceptions(selection, file),
                PlotParser.rules(root.table("plot")),
                wood,
                EstimateParser.parse(root, strata, units),
                TractParser.parse(root, file),
                LayoutParser.parse(root, strata, units),
                SimulationParser.parse(root),
                FollowUpParser.parse(root, file, units, tallies),
                estate);
        checkFieldRules(root, design);
        PlotChecks.check(root, design);
        checkTiles(selection, root, design);
        EstimatorChecks.check(root, selection, design);
        EstateChecks.check(root, cruise, selection, design);
        List.of(cruise, selection, output, root).forEach(Section::close);
        return design;
    }

    /** A target on something that the design does not ask for is never met. */
    private static void checkTarget(
            Section cruise, Attribute target, Map<String, VolumeSpec> volumes, WoodSettings wood) {
        if (!estimated(volumes, wood).contains(target)) {
            String needs = target == Attribute.VOLUME ? "a [volume.CODE] table" : WoodSettings.needs(target);
            cruise.problem(
                    Rule.DESIGN_VALUE,
                    "target_attribute",
                    target.id(),
                    "a target on " + target.label() + " needs " + needs);
        }
    }

    /** What a target may apply to. */
    private static List<Attribute> estimated(Map<String, VolumeSpec> volumes, WoodSettings wood) {
        List<Attribute> estimated = new ArrayList<>(List.of(Attribute.TREES, Attribute.BASAL_AREA));
        if (!volumes.isEmpty()) {
            estimated.add(Attribute.VOLUME);
        }
        wood.addAttributes(estimated);
        return estimated;
    }

    /** What depends on several tables. */
    private static void checkFieldRules(Section root, Design design) {
        boolean point = design.plot() instanceof PlotDesign.Point;
        boolean distances = design.tallies().stream().anyMatch(t -> t.columns().containsKey(ColumnRole.POINT_DISTANCE));
        Section plot = root.table("plot");
        if (point && distances && design.plotRules().limitTo() == null) {
            plot.problem(
                    Rule.DESIGN_MISSING,
                    "limiting_distance",
                    "",
                    "distances from a point need limiting_distance = \"centre\" or \"face\": the part of the stem that"
                            + " they reach");
        }
        PlanChecks.check(root, design);
        if (point && !design.exceptions().cut().isEmpty()) {
            root.table("selection")
                    .problem(
                            Rule.DESIGN_VALUE,
                            "cut",
                            "",
                            "a point has no area of which a share could lie inside: its plots are as large as their trees");
        }
    }

    /** A stratum of fewer than two plots leaves nothing to correct for. */
    private static void checkTiles(Section selection, Section root, Design design) {
        boolean selected = design.finitePopulation() == FinitePopulation.CORRECT;
        if (selected || design.plan().finitePopulation() == FinitePopulation.CORRECT) {
            Section asking = selected ? selection : root.table("plan");
            design.stratumList().stream()
                    .filter(s -> FinitePopulation.CORRECT.plotsIn(design.plot(), s.areaHa()) < 2)
                    .forEach(s -> asking.problem(
                            Rule.DESIGN_VALUE,
                            "finite_population",
                            "correct",
                            "stratum " + s.code() + " has room for fewer than two plots; check its area and the size of"
                                    + " the plot"));
        }
    }

    /** The parser's message up to the list of all tokens that it would have liked better. */
    private static String firstSentence(String message) {
        return message.length() > 200 ? message.substring(0, 200) + "..." : message;
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
