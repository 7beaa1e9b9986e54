package quadmean.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import quadmean.design.KindsSettings;
import quadmean.design.KindsSettings.Density;
import quadmean.units.Attribute;

/**
 * Kinds of plot compared by the time that the same target takes.
 *
 * @param settings what was compared, and the times
 * @param options the kinds, fixed plots first, each from small to large
 * @param density what stands on a hectare
 * @param cvPercent coefficient of variation that the plot-size rule starts from (percent)
 * @param cvAreaHa area of the plot that it is for (ha); NaN if that plot has no one size
 * @param pilotPlots plots of a pilot with distances on which kinds were tried out; 0 without one
 * @param study how the map was studied, if there is one
 * @param notes what a reader should know, in sentences
 */
public record KindComparison(
        KindsSettings settings,
        List<KindOption> options,
        Density density,
        double cvPercent,
        double cvAreaHa,
        int pilotPlots,
        Optional<Study> study,
        List<String> notes) {
    public KindComparison {
        options = List.copyOf(options);
        notes = List.copyOf(notes);
    }

    /**
     * How a map was studied.
     *
     * @param name the map
     * @param stems its stems
     * @param areaHa its area (ha)
     * @param attribute what was looked at
     * @param places places that plots were tried at
     * @param reachM how far those keep off the edge (m)
     */
    public record Study(String name, int stems, double areaHa, Attribute attribute, int places, double reachM) {}

    /** The kind that takes the fewest hours; empty if none reaches the target. */
    public Optional<KindOption> quickest() {
        return quickest(o -> true);
    }

    /** The same among points with 4 to 8 trees. */
    public Optional<KindOption> quickestUsual() {
        return quickest(o -> o.treeCount() == KindOption.TreeCount.USUAL);
    }

    private Optional<KindOption> quickest(Predicate<KindOption> wanted) {
        return options.stream()
                .filter(o -> o.plots().isPresent())
                .filter(wanted)
                .min(Comparator.comparingDouble(o -> o.work().hours()));
    }
}
