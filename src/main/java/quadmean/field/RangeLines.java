package quadmean.field;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;

/** The lines of a range, one after the other; line ends of any kind. */
final class RangeLines {
    private final EstateRange range;
    private int at;
    private long number;

    /** Stands on the first line. */
    RangeLines(EstateRange range) {
        this.range = range;
        this.number = range.firstLine();
    }

    /** Where the line starts among the bytes of the range. */
    int at() {
        return at;
    }

    /** Its number in the file. */
    long number() {
        return number;
    }

    /** Goes on to a line; false if the range ends before. */
    boolean toLine(long wanted) {
        while (number < wanted && at < range.length()) {
            int end = end();
            byte[] bytes = range.bytes();
            boolean isPair = end + 1 < range.length() && bytes[end] == '\r' && bytes[end + 1] == '\n';
            at = Math.min(range.length(), end + (isPair ? 2 : 1));
            number++;
        }
        return number == wanted && at < range.length();
    }

    private int end() {
        byte[] bytes = range.bytes();
        int end = at;
        while (end < range.length() && bytes[end] != '\n' && bytes[end] != '\r') {
            end++;
        }
        return end;
    }

    /** The line; letters that are none of the file's encoding are replaced. */
    String line() {
        return new String(range.bytes(), at, end() - at, range.file().charset());
    }

    /** Whether the line is text in the encoding of the file. */
    boolean isText() {
        try {
            range.file().charset().newDecoder().decode(ByteBuffer.wrap(range.bytes(), at, end() - at));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }
}
