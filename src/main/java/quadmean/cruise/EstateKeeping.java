package quadmean.cruise;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import quadmean.model.Problem;

/** Where a run over an estate puts what it must not hold in memory, and what it needs to go on after it was interrupted. */
public interface EstateKeeping {
    /** Takes problems as they come. */
    void problems(List<Problem> problems) throws IOException;

    /** Takes the account at the end of a run, refused or not. */
    default void account(EstateAccount account) {}

    /**
     * Keeps a state, in place of the one before; problems taken so far belong to it.
     *
     * @param rows rows that it has added up
     */
    void keep(long rows, Writer state) throws IOException;

    /** The state that an earlier run kept, if it was of the same input; problems taken after it are forgotten. */
    Optional<DataInput> kept() throws IOException;

    /** Whether it is time to keep a state again. */
    boolean isDue();

    /** Writes a state. */
    @FunctionalInterface
    interface Writer {
        void write(DataOutput out) throws IOException;
    }
}
