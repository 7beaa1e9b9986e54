package quadmean.model;

/**
 * A stand of a list of stands. What stands share an entry in {@code curves}, {@code equations} or {@code crew} share its error.
 *
 * @param line line of the list
 * @param name name of the stand, empty for that of its design
 * @param design path of its design as written
 * @param group group that it is added up in, empty for none
 * @param curves what its height curves come from; empty for its own tally alone
 * @param equations what its volume equations come from; empty for the same as all that are empty
 * @param crew its crew and instruments; empty likewise
 */
public record ListedStand(
        long line, String name, String design, String group, String curves, String equations, String crew) {}
