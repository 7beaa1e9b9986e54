package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FileTroubleTest {
    static Stream<Arguments> troubles() {
        return Stream.of(
                Arguments.of(new AccessDeniedException("f"), "f: no permission"),
                Arguments.of(new NoSuchFileException("f"), "f: it is not there"),
                Arguments.of(new FileAlreadyExistsException("f"), "f: a file of that name is in the way"),
                Arguments.of(
                        new FileSystemException("f", null, "No space left on device"), "f: No space left on device"),
                Arguments.of(new FileSystemException("f"), "f: it fails"),
                Arguments.of(new IOException("Input/output error"), "Input/output error"));
    }

    @ParameterizedTest
    @MethodSource("troubles")
    void troubleIsToldInWords(IOException trouble, String words) {
        assertEquals(words, FileTrouble.explain(trouble));
    }
}
