package quadmean.volume;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import quadmean.model.FelledTree;
import quadmean.model.ValidRange;

/**
 * All forms fitted to the trees of a species, or to all trees.
 *
 * @param code species code, or {@code *} for all trees
 * @param trees the trees
 * @param fits the forms, in the order of the enum
 */
public record VolumeFitGroup(String code, List<FelledTree> trees, List<VolumeFit> fits) {
    /** Stands for all trees. */
    public static final String ALL = "*";

    /** Fewer trees say little of other trees (common practice, no source). */
    public static final int FEW_TREES = 20;

    public VolumeFitGroup {
        trees = List.copyOf(trees);
        fits = List.copyOf(fits);
    }

    /** Whether there are so few trees that the equation serves as a makeshift only. */
    public boolean hasFewTrees() {
        return trees.size() < FEW_TREES;
    }

    /** The equation with the smallest leave-one-out error in volume. */
    public Optional<VolumeFit> best() {
        return fits.stream().filter(VolumeFit::isUsable).min(Comparator.comparingDouble(VolumeFit::leaveOneOutM3));
    }

    /** Whether a fit of this group is that one. */
    public boolean isBest(VolumeFit fit) {
        return best().filter(b -> b.form() == fit.form()).isPresent();
    }

    /** Sizes of the trees. */
    public ValidRange range() {
        return new ValidRange(
                trees.stream().mapToDouble(FelledTree::dbhCm).min().orElse(Double.NaN),
                trees.stream().mapToDouble(FelledTree::dbhCm).max().orElse(Double.NaN),
                trees.stream().mapToDouble(FelledTree::heightM).min().orElse(Double.NaN),
                trees.stream().mapToDouble(FelledTree::heightM).max().orElse(Double.NaN));
    }
}
