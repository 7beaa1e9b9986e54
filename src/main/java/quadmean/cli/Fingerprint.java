package quadmean.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import quadmean.design.Design;

/** Tells one input of long work from another without reading it. */
final class Fingerprint {
    private Fingerprint() {}

    /** SHA-256 of design, version of the program, and name, size and time of each input. */
    static String of(Design design, List<Path> inputs) throws IOException {
        StringBuilder text = new StringBuilder(design.sha256() + "\n" + String.join(" ", new Version().getVersion()));
        for (Path input : inputs) {
            text.append('\n').append(input.toAbsolutePath().normalize());
            text.append('\n').append(Files.size(input)).append(' ').append(Files.getLastModifiedTime(input));
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
