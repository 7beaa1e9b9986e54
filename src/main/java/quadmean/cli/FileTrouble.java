package quadmean.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** What went wrong with a file, in words instead of names of exceptions. */
final class FileTrouble {
    private FileTrouble() {}

    static String explain(IOException e) {
        if (!(e instanceof FileSystemException f)) {
            return String.valueOf(e.getMessage());
        }
        String why = f.getReason();
        if (why == null) {
            why = f instanceof AccessDeniedException
                    ? "no permission"
                    : f instanceof NoSuchFileException
                            ? "it is not there"
                            : f instanceof FileAlreadyExistsException
                                    ? "a file of that name is in the way"
                                    : "it fails";
        }
        return f.getFile() + ": " + why;
    }
}
