package quadmean.field;

import quadmean.model.Tree;

/**
 * Takes the plots of an estate, one after the other. What a tree comes to has a number: trees of stands of one kind that read alike are
 * worked out once and taken by their number as often as they come, so that it may depend on nothing but kind and readings.
 */
public interface EstateSink {
    /** In place of a number: the tree cannot be used. */
    int OUT = -1;

    /** Number of a stand; negative for none of that name. */
    int stand(String code);

    /** Number of the kind of a stand, from 0: its trees are worked out alike. */
    int kind(int stand);

    /** A plot starts. */
    void begin(int stand, String plot, long line);

    /**
     * Works out what a tree comes to.
     *
     * @param use whether its number is kept
     * @param problems takes what is wrong with it
     * @return its number; {@link #OUT} if it cannot be used
     */
    int work(int stand, Tree tree, Use use, RowFindings problems);

    /** A tree of the plot under way. */
    void add(int number);

    /** The plot under way is complete. */
    void end();

    /** How often the number of a tree is used. */
    enum Use {
        /** For the next call of {@link #add} alone. */
        ONCE,
        /** From now on. */
        AGAIN
    }
}
