package quadmean.field;

import java.io.Closeable;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a workbook, which is a zip of XML files. What a part may unpack to is bounded, whatever the zip says of
 * itself; document types and entities of the XML are not read.
 */
final class WorkbookZip implements Closeable {
    /** Beyond this much, and more than so many times the packed size, a part is a bomb. */
    private static final long HARMLESS_BYTES = 20_000_000;

    private static final long MOST_TIMES = 200;
    private static final long LARGEST_PART_BYTES = 2_000_000_000;

    private final ZipFile zip;
    private final XMLInputFactory xml = XMLInputFactory.newDefaultFactory();

    WorkbookZip(Path file) throws IOException {
        this.zip = new ZipFile(file.toFile());
        xml.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        xml.setXMLReporter((message, type, information, place) -> {}); // what is wrong is thrown as well
        xml.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    }

    boolean has(String part) {
        return zip.getEntry(part) != null;
    }

    /** Opens a part for reading; closing the workbook closes it. */
    XMLStreamReader open(String part) throws IOException, XMLStreamException {
        ZipEntry entry = zip.getEntry(part);
        InputStream in = entry == null ? null : zip.getInputStream(entry);
        if (entry == null || in == null) {
            throw new ZipException("the part " + part + " is missing");
        }
        // letters are decoded here: the parser prints to the screen when it meets bytes that are none
        InputStream bounded = new Bounded(in, part, entry.getCompressedSize());
        return xml.createXMLStreamReader(new InputStreamReader(bounded, StandardCharsets.UTF_8.newDecoder()));
    }

    /** The value of an attribute, whatever its namespace prefix; null if there is none. */
    static @Nullable String attribute(XMLStreamReader reader, String localName) {
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            if (reader.getAttributeLocalName(i).equals(localName)) {
                return reader.getAttributeValue(i);
            }
        }
        return null;
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    /** Ends the reading of a part that unpacks to too much. */
    private static final class Bounded extends FilterInputStream {
        private final String part;
        private final long most;
        private long read;

        Bounded(InputStream in, String part, long packed) {
            super(in);
            this.part = part;
            this.most = Math.min(LARGEST_PART_BYTES, Math.max(HARMLESS_BYTES, MOST_TIMES * Math.max(packed, 0)));
        }

        @Override
        public int read() throws IOException {
            int c = super.read();
            return count(c, c < 0 ? 0 : 1);
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            int n = super.read(buffer, offset, length);
            return count(n, n);
        }

        private int count(int result, int n) throws IOException {
            read += Math.max(n, 0);
            if (read > most) {
                throw new WorkbookException("the part " + part + " unpacks to more than " + most / 1_000_000
                        + " MB, far more than its packed size allows; this is no tally");
            }
            return result;
        }
    }
}
