package quadmean.volume;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import quadmean.model.FelledData;
import quadmean.model.FelledTree;

/**
 * Volume equations fitted to a table of felled trees.
 *
 * @param data the table
 * @param settings what was fitted
 * @param groups all trees together and each species; one group alone where there is one species or none
 */
public record VolumeFits(FelledData data, VolumeFitSettings settings, List<VolumeFitGroup> groups) {
    public VolumeFits {
        groups = List.copyOf(groups);
    }

    /** Fits each form to all trees, and to each species where there are several. */
    public static VolumeFits of(FelledData data, VolumeFitSettings settings) {
        TreeSet<String> species =
                data.trees().stream().map(FelledTree::species).collect(Collectors.toCollection(TreeSet::new));
        List<VolumeFitGroup> groups = new ArrayList<>();
        if (species.size() != 1 || species.contains("")) {
            groups.add(group(VolumeFitGroup.ALL, data.trees(), settings));
        }
        for (String code : species) {
            if (!code.isEmpty()) {
                List<FelledTree> trees = data.trees().stream()
                        .filter(t -> t.species().equals(code))
                        .toList();
                groups.add(group(code, trees, settings));
            }
        }
        return new VolumeFits(data, settings, groups);
    }

    private static VolumeFitGroup group(String code, List<FelledTree> trees, VolumeFitSettings settings) {
        List<VolumeFit> fits = settings.forms().stream()
                .map(form -> VolumeFitter.fit(form, trees, settings))
                .toList();
        return new VolumeFitGroup(code, trees, fits);
    }
}
