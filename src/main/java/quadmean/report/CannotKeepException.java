package quadmean.report;

import java.io.IOException;

/** What a run needs to keep cannot be written, or another run has its folder. */
public final class CannotKeepException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    CannotKeepException(IOException cause) {
        super(cause);
    }

    /** Why. */
    public IOException trouble() {
        return getCause() instanceof IOException e ? e : new IOException(this);
    }
}
