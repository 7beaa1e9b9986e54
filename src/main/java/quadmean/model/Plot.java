package quadmean.model;

import java.util.List;

/**
 * A plot or point with the trees tallied on it; none makes it a plot of zero.
 *
 * @param id plot number as written
 * @param stratum code of the stratum it lies in
 * @param trees its measured trees in tally order
 * @param counted rows of trees that were counted and not measured
 */
public record Plot(String id, String stratum, List<Tree> trees, List<CountedTrees> counted) {
    public Plot {
        trees = List.copyOf(trees);
        counted = List.copyOf(counted);
    }

    /** A plot whose trees are all measured. */
    public Plot(String id, String stratum, List<Tree> trees) {
        this(id, stratum, trees, List.of());
    }
}
