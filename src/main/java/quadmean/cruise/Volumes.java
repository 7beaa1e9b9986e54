package quadmean.cruise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quadmean.design.Counting;
import quadmean.estimate.Stem;
import quadmean.height.HeightedTree;
import quadmean.model.HeightSource;
import quadmean.model.Tree;
import quadmean.model.VolumeSpec;
import quadmean.units.Attribute;
import quadmean.volume.EquationBook;
import quadmean.volume.TreeEquation;
import quadmean.volume.TreeWood;

/** Volumes tree by tree, with an account of the equations used and of what could not be worked out. */
final class Volumes {
    private final EquationBook equations;
    private final Counting counting;
    private final Map<String, VolumeSpec> used = new TreeMap<>();
    private final List<String> withoutValue = new ArrayList<>();
    private final TreeSet<String> withoutHeight = new TreeSet<>();

    Volumes(EquationBook equations, Counting counting) {
        this.equations = equations;
        this.counting = counting;
    }

    Stem stem(HeightedTree heighted) {
        Tree tree = heighted.tree();
        Set<Attribute> counts = Stream.of(Attribute.values())
                .filter(a -> counting.counts(a, tree.detail().status(), tree.dbhCm()))
                .collect(Collectors.toSet());
        double volume = counts.contains(Attribute.VOLUME) ? volume(heighted) : 0;
        return new Stem(
                tree.species(),
                tree.dbhCm(),
                TreeWood.ofVolume(volume),
                tree.detail().count(),
                counts);
    }

    private double volume(HeightedTree heighted) {
        Tree tree = heighted.tree();
        Optional<TreeEquation> equation = equations.find(tree.species());
        if (equation.isEmpty()) {
            return Double.NaN;
        }
        used.put(tree.species(), equation.get().spec());
        if (heighted.source() == HeightSource.NONE) {
            withoutHeight.add(tree.species());
            return Double.NaN;
        }
        double volume = equation.get().volumeM3(tree.dbhCm(), heighted.heightM());
        if (Double.isNaN(volume)) {
            withoutValue.add(tree.label());
            return 0;
        }
        return volume;
    }

    /** The equation used for each species. */
    Map<String, VolumeSpec> used() {
        return used;
    }

    /** Why volumes are not known; empty if they are. */
    String missing() {
        if (equations.isEmpty()) {
            return "the design has no volume equation";
        }
        return withoutHeight.isEmpty() ? "" : "no height and no height curve for " + String.join(", ", withoutHeight);
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (!withoutValue.isEmpty()) {
            notes.add("The volume equation gives nothing above zero for " + withoutValue.size()
                    + " trees, which count with no volume: " + String.join(", ", withoutValue) + ".");
        }
        return notes;
    }
}
