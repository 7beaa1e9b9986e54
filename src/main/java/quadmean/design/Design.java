package quadmean.design;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quadmean.model.DegreesRule;
import quadmean.model.EstimateRules;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.model.Policy;
import quadmean.model.Rule;
import quadmean.model.SelectionMethod;
import quadmean.model.SizeRules;
import quadmean.model.Stratum;
import quadmean.model.VolumeSpec;
import quadmean.units.Attribute;
import quadmean.units.UnitSystem;

/**
 * A cruise design, read and complete: every default is filled in.
 *
 * @param file the design file
 * @param text its content
 * @param sha256 hash of its content, in hexadecimal
 * @param name name of the cruise
 * @param date date of the cruise as given, empty if not
 * @param units unit system in which the cruise is read and reported
 * @param confidence confidence level, in (0, 1)
 * @param targetErrorPercent allowed sampling error (percent)
 * @param targetAttribute attribute that the target applies to
 * @param seed seed of everything random
 * @param strata strata, at least one
 * @param plot kind and size of the plots
 * @param selection how plots were chosen
 * @param finitePopulation whether standard errors shrink as the plots cover the tract
 * @param degreesRule how they are counted over strata
 * @param tallies tally files
 * @param species species by code
 * @param height how heights are fitted
 * @param volumes volume equations by species code, group, or {@code *}
 * @param policies policy of each rule
 * @param plan how to plan
 * @param sizes how trees are sorted by size
 * @param notes who cruised where
 * @param sheets what stands on the field sheets
 * @param counting which trees count in what
 * @param exceptions plots that are not like the others
 * @param plotRules how crews decide whether a tree is on the plot
 * @param wood what is worked out of trees besides their cubic volume
 * @param estimation how to estimate
 * @param tract where the boundary of the tract is, if the design says
 * @param layout how plots are laid out on the map, if the design says
 * @param simulation what cruises on paper need to know besides
 * @param followUp what is done during and after the cruise
 * @param estate the stands, where the design is of many
 */
public record Design(
        Path file,
        String text,
        String sha256,
        String name,
        String date,
        UnitSystem units,
        double confidence,
        double targetErrorPercent,
        Attribute targetAttribute,
        long seed,
        List<StratumEntry> strata,
        PlotDesign plot,
        SelectionMethod selection,
        FinitePopulation finitePopulation,
        DegreesRule degreesRule,
        List<TallyFile> tallies,
        Map<String, SpeciesEntry> species,
        HeightEntry height,
        Map<String, VolumeSpec> volumes,
        Map<Rule, Policy> policies,
        PlanSettings plan,
        SizeRules sizes,
        CruiseNotes notes,
        SheetSettings sheets,
        Counting counting,
        PlotExceptions exceptions,
        PlotRules plotRules,
        WoodSettings wood,
        EstimateRules estimation,
        Optional<TractSettings> tract,
        Optional<LayoutSettings> layout,
        SimulationSettings simulation,
        FollowUp followUp,
        Optional<EstateSettings> estate) {
    public Design {
        strata = List.copyOf(strata);
        tallies = List.copyOf(tallies);
        // as the file has them: the order of a hashed map changes from run to run, and outputs must not
        species = Collections.unmodifiableMap(new LinkedHashMap<>(species));
        volumes = Collections.unmodifiableMap(new LinkedHashMap<>(volumes));
        policies = Map.copyOf(policies);
    }

    /** The same design on other tallies, of which some plots may be missing without further ado. */
    public Design onSomePlots(List<TallyFile> others) {
        Map<Rule, Policy> lenient = new HashMap<>(policies);
        lenient.put(Rule.PLOT_NOT_IN_TALLY, Policy.DROP);
        return with(strata, others, lenient);
    }

    /** The same design for some of its strata. */
    public Design onStrata(List<StratumEntry> some) {
        return with(some, tallies, policies);
    }

    private Design with(List<StratumEntry> some, List<TallyFile> others, Map<Rule, Policy> lenient) {
        return new Design(
                file,
                text,
                sha256,
                name,
                date,
                units,
                confidence,
                targetErrorPercent,
                targetAttribute,
                seed,
                some,
                plot,
                selection,
                finitePopulation,
                degreesRule,
                others,
                species,
                height,
                volumes,
                lenient,
                plan,
                sizes,
                notes,
                sheets,
                counting,
                exceptions,
                plotRules,
                wood,
                estimation,
                tract,
                layout,
                simulation,
                followUp,
                estate);
    }

    /**
     * The {@code [height]} table.
     *
     * @param breastHeight breast height in the design's length unit
     * @param minHeights heights a species needs for a curve of its own
     * @param offCurve robust standard deviations beyond which a height is off the curve
     * @param readings errors of what heights are read from
     * @param curves how curves are fitted and used
     */
    public record HeightEntry(
            double breastHeight, int minHeights, double offCurve, ReadingSettings readings, CurveSettings curves) {
        /** An entry that says nothing of curves. */
        public HeightEntry(double breastHeight, int minHeights, double offCurve, ReadingSettings readings) {
            this(breastHeight, minHeights, offCurve, readings, CurveSettings.USUAL);
        }
    }

    /** Width of diameter classes (cm). */
    public double diameterClassCm() {
        return sizes.classCm();
    }

    /** The policy of a rule. */
    public Policy policy(Rule rule) {
        return policies.getOrDefault(rule, rule.defaultPolicy());
    }

    /** Area of the whole stand (ha). */
    public double areaHa() {
        return strata.stream().mapToDouble(s -> s.stratum().areaHa()).sum();
    }

    /** The strata without what the design says of their plots. */
    public List<Stratum> stratumList() {
        return strata.stream().map(StratumEntry::stratum).toList();
    }

    /** What the cruise estimates as sums over trees, in the order of the outputs. */
    public List<Attribute> attributes() {
        List<Attribute> all = new ArrayList<>(List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME));
        wood.addAttributes(all);
        return all;
    }

    /** Name of a species for people; the code itself where the design has none. */
    public String speciesName(String code) {
        SpeciesEntry entry = species.get(code);
        return entry == null ? code : entry.name();
    }
}
