package quadmean.field;

import org.jspecify.annotations.Nullable;
import quadmean.model.Tree;

/**
 * Takes the plots of an estate, one after the other. Trees of stands of one kind that read alike are worked out once and taken as often
 * as they come, so that what is made of a tree may depend on nothing but its kind and its readings.
 *
 * @param <T> what is made of a tree
 */
public interface EstateSink<T> {
    /** Number of a stand; negative for none of that name. */
    int stand(String code);

    /** Number of the kind of a stand, from 0: its trees are worked out alike. */
    int kind(int stand);

    /** A plot starts. */
    void begin(int stand, String plot, long line);

    /**
     * Makes of a tree what the estimate needs.
     *
     * @param problems takes what is wrong with it
     * @return null if it cannot be used
     */
    @Nullable
    T work(int stand, Tree tree, RowFindings problems);

    /** A tree of the plot under way. */
    void add(T tree);

    /** The plot under way is complete. */
    void end();
}
