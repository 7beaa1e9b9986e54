package quadmean.scale;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Bytes of rows on their way to a stream, gathered in one buffer; numbers are written without making text of them. */
final class RowBuffer {
    private static final int SIZE = 1 << 16;
    private static final int LONGEST = 256;

    private final byte[] bytes = new byte[SIZE];
    private int length;

    /** Appends ASCII. */
    RowBuffer add(byte[] text) {
        System.arraycopy(text, 0, bytes, length, text.length);
        length += text.length;
        return this;
    }

    RowBuffer add(char letter) {
        bytes[length++] = (byte) letter;
        return this;
    }

    /** Appends a whole number, 0 or more. */
    RowBuffer add(int number) {
        if (number >= 10) {
            add(number / 10);
        }
        return add((char) ('0' + number % 10));
    }

    /** Appends tenths as a number with one decimal. */
    RowBuffer addTenths(int tenths) {
        return add(tenths / 10).add('.').add((char) ('0' + tenths % 10));
    }

    /** Ends a row; what is gathered goes on when the next row may not fit. */
    void endRow(OutputStream out) throws IOException {
        add('\n');
        if (length > SIZE - LONGEST) {
            flush(out);
        }
    }

    /** Hands on what is gathered. */
    void flush(OutputStream out) throws IOException {
        out.write(bytes, 0, length);
        length = 0;
    }

    static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
