package quadmean.report;

import java.io.Serial;
import java.nio.file.Path;

/** An output would replace one of the files it was made from. */
public final class InputOverwriteException extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1;

    InputOverwriteException(Path file) {
        super("the output " + file + " is one of the input files; choose another folder with --out");
    }
}
