package quadmean.simulate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import quadmean.layout.Tract;
import quadmean.layout.TractPart;
import quadmean.model.MappedTree;

/** A forest in which every tree is known, on ground that is known too. */
public final class Forest {
    private final String name;
    private final Tract tract;
    private final List<MappedTree> trees;
    private final Map<String, Ground> strata;
    private final Ground whole;
    private final int[] stratumOf;
    private final List<String> notes;

    /**
     * A forest.
     *
     * @param name what outputs call it
     * @param trees its trees, each on one of the strata of the tract
     * @param notes what a reader should know of it, in sentences
     */
    Forest(String name, Tract tract, List<MappedTree> trees, List<String> notes) {
        this.name = name;
        this.tract = tract;
        this.trees = List.copyOf(trees);
        this.notes = List.copyOf(notes);
        this.strata = new LinkedHashMap<>();
        tract.parts().forEach(p -> strata.put(p.stratum(), new Ground(p.shape())));
        this.whole = new Ground(tract.parts().stream()
                .map(TractPart::shape)
                .reduce(org.locationtech.jts.geom.Geometry::union)
                .orElseThrow());
        this.stratumOf = new int[trees.size()];
        List<Ground> grounds = new ArrayList<>(strata.values());
        for (int i = 0; i < stratumOf.length; i++) {
            stratumOf[i] = stratum(grounds, trees.get(i));
        }
    }

    /** The first stratum that holds a tree; a tree on a line belongs to one side of it only. */
    private static int stratum(List<Ground> grounds, MappedTree tree) {
        for (int s = 0; s < grounds.size(); s++) {
            if (grounds.get(s).holds(tree.x(), tree.y())) {
                return s;
            }
        }
        throw new IllegalArgumentException("tree of row " + tree.row() + " stands outside of the tract");
    }

    /** The same forest without the trees below a size. */
    Forest from(double smallestCm) {
        List<MappedTree> left =
                trees.stream().filter(t -> t.dbhCm() >= smallestCm).toList();
        if (left.size() == trees.size()) {
            return this;
        }
        List<String> more = new ArrayList<>(notes);
        more.add((trees.size() - left.size())
                + " trees are smaller than the design tallies; neither the truth nor the estimates hold them.");
        return new Forest(name, tract, left, more);
    }

    /** What outputs call it. */
    public String name() {
        return name;
    }

    /** The ground. */
    public Tract tract() {
        return tract;
    }

    /** Its trees. */
    public List<MappedTree> trees() {
        return trees;
    }

    /** What a reader should know of it, in sentences. */
    public List<String> notes() {
        return notes;
    }

    /** Area of all strata (ha). */
    public double areaHa() {
        return strata.values().stream().mapToDouble(Ground::areaHa).sum();
    }

    /** Whether every tree has a height. */
    public boolean hasHeights() {
        return trees.stream().noneMatch(t -> Double.isNaN(t.heightM()));
    }

    /** The ground of each stratum by code, in the order of the design. */
    Map<String, Ground> strata() {
        return strata;
    }

    /** The ground of all strata together. */
    Ground whole() {
        return whole;
    }

    /** The stratum that a tree stands in, counted from 0 in the order of {@link #strata}. */
    int stratumOf(int tree) {
        return stratumOf[tree];
    }

    Envelope box() {
        return whole.box();
    }
}
