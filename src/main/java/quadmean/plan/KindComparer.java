package quadmean.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.design.KindInput;
import quadmean.design.KindsSettings;
import quadmean.design.KindsSettings.Density;
import quadmean.model.MappedStem;
import quadmean.model.Plot;
import quadmean.model.PlotDesign;
import quadmean.model.StemMap;
import quadmean.stats.SampleSize;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;

/** Compares kinds of plot by the time that the target of a design takes with each. */
public final class KindComparer {
    private static final double MINUTES = 60;

    private final Design design;
    private final KindsSettings settings;
    private final Density density;
    private final double cvPercent;
    private final double cvAreaHa;
    private final @Nullable StemMap map;

    private KindComparer(Design design, KindsSettings settings, double cvPercent, @Nullable StemMap map) {
        this.design = design;
        this.settings = settings;
        this.density = settings.density().orElseGet(() -> density(map));
        this.cvPercent = settings.cvPercent().orElse(cvPercent);
        this.cvAreaHa = settings.cvAreaHa().orElse(PlotSizeRule.areaHa(design.plot(), meanTreeM2()));
        this.map = map;
    }

    /**
     * Compares.
     *
     * @param outlook what is expected of each stratum with the design's own plots
     * @param map the map of stems that the settings name, on which the largest plot has room; null without one
     * @param pilot the plots of a pilot; none without one
     */
    public static KindComparison compare(
            Design design,
            KindsSettings settings,
            List<StratumOutlook> outlook,
            @Nullable StemMap map,
            List<Plot> pilot) {
        return new KindComparer(design, settings, pooledCvPercent(outlook), map).compare(pilot);
    }

    /** The kinds to compare: fixed plots, then points with large factors before small ones, whose plots are larger. */
    public static List<PlotDesign> plots(KindsSettings settings) {
        List<PlotDesign> plots = new ArrayList<>();
        settings.plotAreasHa().forEach(a -> plots.add(new PlotDesign.Fixed(a)));
        List<Double> factors = new ArrayList<>(settings.factors());
        Collections.reverse(factors);
        factors.forEach(f -> plots.add(new PlotDesign.Point(f)));
        return plots;
    }

    /** Variation within strata over the mean of all: what proportional sampling of the strata works with (percent). */
    static double pooledCvPercent(List<StratumOutlook> outlook) {
        double area = 0;
        double mean = 0;
        double variance = 0;
        for (StratumOutlook s : outlook) {
            area += s.areaHa();
            mean += s.areaHa() * s.mean();
            variance += s.areaHa() * Math.pow(s.mean() * s.cvPercent(), 2);
        }
        return Math.sqrt(variance / area) / (mean / area);
    }

    private static Density density(@Nullable StemMap map) {
        if (map == null) {
            throw new IllegalArgumentException("the density comes from the design or from a map of stems");
        }
        double basalArea = map.stems().stream()
                .mapToDouble(MappedStem::dbhCm)
                .map(BasalArea::ofTree)
                .sum();
        return new Density(basalArea / map.areaHa(), map.stems().size() / map.areaHa());
    }

    private double meanTreeM2() {
        return PlotSizeRule.meanTreeM2(density.basalArea(), density.trees());
    }

    private KindComparison compare(List<Plot> pilot) {
        List<PlotDesign> plots = plots(settings);
        MapStudy study = map == null ? null : MapStudy.of(map, attribute(), plots);
        Optional<PilotStudy> tried = PilotStudy.of(design, attribute(), pilot);
        List<KindOption> options = new ArrayList<>();
        KindNotes notes = new KindNotes(design, cvPercent, cvAreaHa, pilot, tried.isPresent());
        for (PlotDesign plot : plots) {
            MapStudy.Finding finding = study == null ? null : study.of(plot);
            double cvByPilot = tried.map(t -> t.cvPercent(plot)).orElse(Double.NaN);
            KindOption option = option(plot, finding == null ? Double.NaN : finding.cvPercent(), cvByPilot);
            options.add(option);
            notes.see(option, finding);
        }
        Optional<KindComparison.Study> told = Optional.ofNullable(map)
                .map(m -> new KindComparison.Study(
                        m.name(),
                        m.stems().size(),
                        m.areaHa(),
                        attribute(),
                        Objects.requireNonNull(study).places(),
                        study.reachM()));
        return new KindComparison(
                settings,
                options,
                density,
                cvPercent,
                cvAreaHa,
                tried.map(PilotStudy::plots).orElse(0),
                told,
                notes.sentences(told));
    }

    /** A map has no volumes. */
    private Attribute attribute() {
        return design.targetAttribute() == Attribute.TREES ? Attribute.TREES : Attribute.BASAL_AREA;
    }

    private KindOption option(PlotDesign plot, double cvByMap, double cvByPilot) {
        double areaHa = PlotSizeRule.areaHa(plot, meanTreeM2());
        double cvByRule = Double.isNaN(cvAreaHa) ? Double.NaN : PlotSizeRule.cvPercent(cvPercent, cvAreaHa, areaHa);
        double trees = density.trees() * areaHa;
        OptionalInt n = plots(plot, KindOption.counting(cvByRule, cvByMap, cvByPilot));
        KindOption.Work work = n.isPresent() ? work(n.getAsInt(), trees) : KindOption.Work.UNKNOWN;
        return new KindOption(plot, areaHa, trees, cvByRule, cvByMap, cvByPilot, n, work);
    }

    private OptionalInt plots(PlotDesign plot, double cv) {
        double population = design.plan().finitePopulation().plotsIn(plot, design.areaHa());
        return cv > 0 && population >= 2
                ? SampleSize.simpleRandom(cv, design.targetErrorPercent(), design.confidence(), population)
                : OptionalInt.empty();
    }

    /** The walk is the spacing of a square grid times the plots: √(area/n)·n. */
    private KindOption.Work work(int n, double treesPerPlot) {
        KindsSettings.Times times = settings.times();
        double walkM = Math.sqrt(design.areaHa() * PlotDesign.M2_PER_HA * n);
        return new KindOption.Work(
                walkM,
                walkM / times.of(KindInput.WALKING),
                n * times.of(KindInput.SET_UP) / MINUTES,
                n * treesPerPlot * times.minutesPerTree() / MINUTES);
    }
}
