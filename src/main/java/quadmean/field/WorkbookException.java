package quadmean.field;

import java.io.IOException;
import javax.xml.stream.XMLStreamException;

/** Says why a workbook cannot be read, in words for its owner. */
final class WorkbookException extends IOException {
    private static final long serialVersionUID = 1;

    WorkbookException(String message) {
        super(message);
    }

    /** What is wrong with a workbook that made the zip or XML reader fail. */
    static String explain(Exception e) {
        Throwable cause = e;
        while (cause != null) {
            if (cause instanceof WorkbookException w) {
                return w.words();
            }
            cause = cause instanceof XMLStreamException x && x.getNestedException() != null
                    ? x.getNestedException()
                    : cause.getCause();
        }
        if (e instanceof XMLStreamException) { // whose words are in the language of the machine
            return "the workbook is damaged: a part of it cannot be read as XML";
        }
        String what = String.valueOf(e.getMessage());
        return what.contains("encrypted")
                ? "the workbook is encrypted; save it without a password"
                : "the workbook is damaged: " + what.lines().findFirst().orElse("");
    }

    /** The message for its owner. */
    String words() {
        return String.valueOf(getMessage());
    }
}
