package quadmean.estimate;

import java.util.EnumSet;
import java.util.Set;
import quadmean.units.Attribute;
import quadmean.volume.TreeWood;

/**
 * What the estimate needs of a tallied tree.
 *
 * @param species species code
 * @param dbhCm dbh (cm)
 * @param heightM total height, or height to the break of a broken top (m); NaN if it is not known
 * @param wood what is in one tree
 * @param count number of trees that the tally row stands for, each as often as the treatment of the boundary has it
 * @param counts attributes that the tree counts in; in the others it is a zero
 * @param prediction what 3P sampling foretold of it; 0 if nothing
 */
public record Stem(
        String species,
        double dbhCm,
        double heightM,
        TreeWood wood,
        int count,
        Set<Attribute> counts,
        double prediction) {
    private static final Set<Attribute> ALL = Set.copyOf(EnumSet.allOf(Attribute.class));

    public Stem {
        counts = Set.copyOf(counts);
    }

    /** A tree of which nothing was foretold. */
    public Stem(String species, double dbhCm, double heightM, TreeWood wood, int count, Set<Attribute> counts) {
        this(species, dbhCm, heightM, wood, count, counts, 0);
    }

    /** A single tree that counts in everything, of which the volume is known (m³; NaN if it is not), and no height. */
    public Stem(String species, double dbhCm, double volumeM3) {
        this(species, dbhCm, Double.NaN, volumeM3);
    }

    /** A single tree that counts in everything, with its height (m) and volume (m³). */
    public Stem(String species, double dbhCm, double heightM, double volumeM3) {
        this(species, dbhCm, heightM, TreeWood.ofVolume(volumeM3), 1, ALL);
    }
}
