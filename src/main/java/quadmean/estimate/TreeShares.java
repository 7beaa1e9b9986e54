package quadmean.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import quadmean.model.PlotDesign;
import quadmean.units.Attribute;

/** What trees add to the values of their plots, by number. It lies close together, so that the common trees stay at hand. */
public final class TreeShares {
    private static final int ONCE = 0;

    private final PlotDesign plot;
    private final List<Attribute> attributes;
    private final Map<String, Integer> numberOf = new HashMap<>();
    private final List<String> species = new ArrayList<>();
    private double[] perHa;
    private int[] speciesOf = new int[1024];
    private int[] trees = new int[1024];
    private int size = 1;

    /**
     * No trees yet.
     *
     * @param attributes attributes to estimate
     */
    public TreeShares(PlotDesign plot, List<Attribute> attributes) {
        this.plot = plot;
        this.attributes = List.copyOf(attributes);
        this.perHa = new double[attributes.size() * speciesOf.length];
    }

    /** Works out the share of a stem, what it adds per hectare to each attribute, and returns its number, which stays its own. */
    public int keep(Stem stem) {
        return put(stem, size++);
    }

    /** The same with a number that is good until the next stem of this kind. */
    public int once(Stem stem) {
        return put(stem, ONCE);
    }

    private int put(Stem stem, int number) {
        if (size > speciesOf.length) {
            speciesOf = Arrays.copyOf(speciesOf, 2 * speciesOf.length);
            trees = Arrays.copyOf(trees, speciesOf.length);
            perHa = Arrays.copyOf(perHa, attributes.size() * speciesOf.length);
        }
        for (int i = 0; i < attributes.size(); i++) {
            perHa[number * attributes.size() + i] = perHa(stem, attributes.get(i));
        }
        speciesOf[number] = numberOf.computeIfAbsent(stem.species(), this::named);
        trees[number] = stem.count();
        return number;
    }

    private int named(String code) {
        species.add(code);
        return species.size() - 1;
    }

    private double perHa(Stem stem, Attribute attribute) {
        return stem.counts().contains(attribute)
                ? PlotValue.treesPerHa(plot, stem) * PlotValue.value(attribute, Part.ALL, stem)
                : 0;
    }

    /** Trees that the row of a number stands for. */
    public int trees(int number) {
        return trees[number];
    }

    /** Number of the species of a tree, from 0. */
    int species(int number) {
        return speciesOf[number];
    }

    String code(int ofSpecies) {
        return species.get(ofSpecies);
    }

    double perHa(int number, int attribute) {
        return perHa[number * attributes.size() + attribute];
    }
}
