package quadmean.field;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/**
 * Notes in passing whether a CSV text ends inside quotes. A quote that nobody closed turns all rows after it into one
 * field, and they would be lost without a word.
 */
final class QuoteWatch extends FilterReader {
    private enum State {
        FIELD_START,
        PLAIN,
        QUOTED,
        /** After a quote within quotes: the end of the field, or half of a doubled quote. */
        MAYBE_CLOSED
    }

    private final char separator;
    private State state = State.FIELD_START;

    QuoteWatch(Reader in, char separator) {
        super(in);
        this.separator = separator;
    }

    /** Whether a text ends inside quotes. */
    static boolean isOpenAfter(String text, char separator) {
        QuoteWatch watch = new QuoteWatch(Reader.nullReader(), separator);
        text.chars().forEach(c -> watch.pass((char) c));
        return watch.isOpen();
    }

    /** Whether what was read so far ends inside quotes. */
    boolean isOpen() {
        return state == State.QUOTED;
    }

    @Override
    public int read() throws IOException {
        int c = super.read();
        if (c >= 0) {
            pass((char) c);
        }
        return c;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        int n = super.read(buffer, offset, length);
        for (int i = 0; i < n; i++) {
            pass(buffer[offset + i]);
        }
        return n;
    }

    private void pass(char c) {
        if (state == State.QUOTED) {
            state = c == '"' ? State.MAYBE_CLOSED : State.QUOTED;
        } else if (c == '"' && state != State.PLAIN) {
            state = State.QUOTED;
        } else {
            state = c == separator || c == '\n' || c == '\r' ? State.FIELD_START : State.PLAIN;
        }
    }
}
