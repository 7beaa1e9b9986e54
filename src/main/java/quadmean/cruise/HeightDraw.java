package quadmean.cruise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import quadmean.model.FieldHeight;
import quadmean.model.Tree;
import quadmean.stats.RandomStream;

/**
 * Draws measured trees at random, so many of each species in each region. A tree gets a number from the seed and from what the tally
 * says of it, and those of the smallest numbers are drawn: whoever reads which part of the files, and in whatever order, draws the same.
 */
final class HeightDraw {
    private final long seed;
    private final int most;
    private final Map<Group, PriorityQueue<Drawn>> groups = new TreeMap<>();

    private record Group(int region, String species) implements Comparable<Group> {
        private static final Comparator<Group> ORDER =
                Comparator.comparingInt(Group::region).thenComparing(Group::species);

        @Override
        public int compareTo(Group other) {
            return ORDER.compare(this, other);
        }
    }

    private record Drawn(long number, Tree tree) {
        /** Trees of one number read alike in all that matters here. */
        private static final Comparator<Drawn> LAST_FIRST =
                Comparator.comparingLong(Drawn::number).reversed();
    }

    /**
     * Nothing drawn yet.
     *
     * @param most most trees of a species in a region
     */
    HeightDraw(long seed, int most) {
        this.seed = seed;
        this.most = most;
    }

    /** Most trees of a species in a region. */
    int most() {
        return most;
    }

    /** Offers a measured tree. */
    void offer(int region, String stand, Tree tree) {
        offer(new Group(region, tree.species()), new Drawn(number(stand, tree), tree));
    }

    /** Offers what another draw holds. */
    void offer(HeightDraw other) {
        other.groups.forEach((group, drawn) -> drawn.forEach(d -> offer(group, d)));
    }

    private void offer(Group group, Drawn drawn) {
        PriorityQueue<Drawn> queue = groups.computeIfAbsent(group, g -> new PriorityQueue<>(Drawn.LAST_FIRST));
        if (queue.size() < most) {
            queue.add(drawn);
        } else if (drawn.number() < queue.element().number()) {
            queue.remove();
            queue.add(drawn);
        }
    }

    /** The trees drawn in a region, species by species, in the order of their numbers. */
    List<Tree> drawn(int region) {
        List<Tree> trees = new ArrayList<>();
        groups.forEach((group, queue) -> {
            if (group.region() == region) {
                queue.stream().sorted(Comparator.comparingLong(Drawn::number)).forEach(d -> trees.add(d.tree()));
            }
        });
        return trees;
    }

    private long number(String stand, Tree tree) {
        FieldHeight height = tree.height();
        long n = RandomStream.after(seed);
        n = RandomStream.after(n ^ stand.hashCode());
        n = RandomStream.after(n ^ tree.plot().hashCode());
        n = RandomStream.after(n ^ tree.number().hashCode());
        n = RandomStream.after(n ^ Double.doubleToLongBits(tree.dbhCm()));
        return RandomStream.after(n ^ Double.doubleToLongBits(height == null ? 0 : height.metres()));
    }
}
