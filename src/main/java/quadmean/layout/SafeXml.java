package quadmean.layout;

import java.io.ByteArrayInputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** XML from people nobody knows: no document types, so that no entity is followed or blown up. */
final class SafeXml {
    private SafeXml() {}

    static XMLStreamReader reader(byte[] bytes) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("a boundary must not fetch " + systemId);
        });
        return factory.createXMLStreamReader(new ByteArrayInputStream(bytes));
    }

    /** Refuses a document type, in which entities are declared. */
    static void check(int event) throws XMLStreamException {
        if (event == XMLStreamReader.DTD) {
            throw new XMLStreamException("it declares a document type (DOCTYPE), which a boundary does not need");
        }
    }

    /** The sentence of an error of XML, without the place that stands before it. */
    static String explain(XMLStreamException e) {
        String message = String.valueOf(e.getMessage());
        int from = message.indexOf("Message: ");
        return (from < 0 ? message : message.substring(from + 9))
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** The line of an error of XML, 0 if not known. */
    static long line(XMLStreamException e) {
        return e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber());
    }
}
