package quadmean.report;

import java.io.IOException;
import java.io.OutputStream;

/** What goes into an output file. */
public interface Content {
    /**
     * Writes all of it; the caller closes the stream.
     *
     * @throws IOException if it cannot be written
     */
    void writeTo(OutputStream out) throws IOException;
}
