package quadmean.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Takes the time of writing out of a workbook, so that the same run gives the same bytes. */
final class Timeless {
    /** The first day that a zip file can name. */
    private static final LocalDateTime DAY = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final String CREATED = "<dcterms:created[^>]*>[^<]*</dcterms:created>";

    private Timeless() {}

    /** Copies a workbook to a stream, which stays open. */
    static void copy(Path workbook, OutputStream out) throws IOException {
        ZipOutputStream to = new ZipOutputStream(out);
        try (ZipFile from = new ZipFile(workbook.toFile())) {
            for (ZipEntry e : Collections.list(from.entries())) {
                ZipEntry entry = new ZipEntry(e.getName());
                entry.setTimeLocal(DAY);
                to.putNextEntry(entry);
                to.write(part(from, e));
                to.closeEntry();
            }
        }
        to.finish();
    }

    private static byte[] part(ZipFile from, ZipEntry entry) throws IOException {
        byte[] part = from.getInputStream(entry).readAllBytes();
        return entry.getName().equals("docProps/core.xml")
                ? new String(part, StandardCharsets.UTF_8)
                        .replaceAll(CREATED, "")
                        .getBytes(StandardCharsets.UTF_8)
                : part;
    }
}
