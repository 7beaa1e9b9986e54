package quadmean.field;

import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** A file of an estate's tally that cannot be read to its end. */
public final class BrokenTallyException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final long line;

    /**
     * A break in a file.
     *
     * @param line line near which it is
     */
    BrokenTallyException(EstateFile file, long line, String detail) {
        super(detail);
        this.file = file.name();
        this.line = line;
    }

    /** The same as a problem of the input. */
    public Problem problem() {
        return new Problem(file, line, "", "", Rule.FILE_UNREADABLE, Policy.REFUSE, String.valueOf(getMessage()));
    }
}
