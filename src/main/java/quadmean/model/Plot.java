package quadmean.model;

import java.util.List;

/**
 * A plot or point with the trees tallied on it; none makes it a plot of zero.
 *
 * @param id plot number as written
 * @param stratum code of the stratum it lies in
 * @param trees its trees in tally order
 */
public record Plot(String id, String stratum, List<Tree> trees) {
    public Plot {
        trees = List.copyOf(trees);
    }
}
