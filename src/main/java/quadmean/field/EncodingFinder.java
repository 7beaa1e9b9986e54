package quadmean.field;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.design.Encoding;
import quadmean.model.Policy;
import quadmean.model.Rule;

/**
 * Finds how the letters of a text file are stored: by its byte order mark, by the design's word, or by reading it once
 * through. Letters are never replaced: what no encoding explains is refused.
 */
final class EncodingFinder {
    private static final int CHUNK = 1 << 16;

    private final Path path;
    private final FileProblems problems;

    EncodingFinder(Path path, FileProblems problems) {
        this.path = path;
        this.problems = problems;
    }

    /** The character set to read the file with; empty if there is none, which is then noted. */
    Optional<Charset> find(@Nullable Encoding declared) throws IOException {
        byte[] start = start();
        if (startsWith(start, 0xFF, 0xFE, 0, 0) || startsWith(start, 0, 0, 0xFE, 0xFF)) {
            problems.unreadable("the file is text in UTF-32");
            return Optional.empty();
        }
        Optional<Charset> marked = marked(start);
        if (declared == null) {
            return marked.isPresent() ? Optional.of(stated(marked.get())) : detected();
        }
        boolean utf16 = declared == Encoding.UTF_16;
        boolean agrees = marked.isEmpty()
                || marked.get().equals(declared.charset())
                || (utf16 && !marked.get().equals(StandardCharsets.UTF_8));
        if (!agrees) {
            String detail = "the byte order mark says " + marked.get() + ", the design " + declared.id();
            if (problems.add(
                            Rule.FORMAT_CONTRADICTS, 0, "encoding", marked.get().name(), detail)
                    != Policy.KEEP) {
                return Optional.empty();
            }
        }
        Charset unmarked = utf16 && start.length > 1 && start[1] == 0 ? StandardCharsets.UTF_16LE : declared.charset();
        return Optional.of(agrees ? marked.orElse(unmarked) : declared.charset());
    }

    private byte[] start() throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(4);
        }
    }

    private static Optional<Charset> marked(byte[] start) {
        if (startsWith(start, 0xEF, 0xBB, 0xBF)) {
            return Optional.of(StandardCharsets.UTF_8);
        }
        if (startsWith(start, 0xFF, 0xFE)) {
            return Optional.of(StandardCharsets.UTF_16LE);
        }
        return startsWith(start, 0xFE, 0xFF) ? Optional.of(StandardCharsets.UTF_16BE) : Optional.empty();
    }

    private static boolean startsWith(byte[] bytes, int... first) {
        if (bytes.length < first.length) {
            return false;
        }
        for (int i = 0; i < first.length; i++) {
            if ((bytes[i] & 0xFF) != first[i]) {
                return false;
            }
        }
        return true;
    }

    private Charset stated(Charset marked) {
        if (!marked.equals(StandardCharsets.UTF_8)) {
            state(Encoding.UTF_16, "the file is text in UTF-16, by its byte order mark");
        }
        return marked;
    }

    private void state(Encoding encoding, String detail) {
        problems.add(Rule.FORMAT_DETECTED, 0, "encoding", encoding.id(), detail);
    }

    private Optional<Charset> detected() throws IOException {
        Letters utf8 = count(StandardCharsets.UTF_8);
        if (utf8.nulls > utf8.all / 4) {
            problems.unreadable("the file looks like text in UTF-16 without a byte order mark; if it is, say so with"
                    + " encoding = \"utf-16\"");
            return Optional.empty();
        }
        if (utf8.broken == 0) {
            return Optional.of(StandardCharsets.UTF_8);
        }
        Letters ansi = count(Encoding.WINDOWS_1252.charset());
        if (utf8.beyondAscii > 0 || ansi.broken > 0 || ansi.controls > 0) {
            problems.unreadable("the file is not text in UTF-8, nor all in windows-1252: letters are damaged from line "
                    + utf8.firstBroken + " on");
            return Optional.empty();
        }
        state(
                Encoding.WINDOWS_1252,
                "the file is no UTF-8 and is read as windows-1252; look whether the letters are right: line "
                        + utf8.firstBroken + " has \"" + ansi.example + "\"");
        return Optional.of(Encoding.WINDOWS_1252.charset());
    }

    private Letters count(Charset charset) throws IOException {
        Letters letters = new Letters();
        CharsetDecoder decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.allocate(CHUNK);
        CharBuffer chars = CharBuffer.allocate(CHUNK);
        try (InputStream in = Files.newInputStream(path)) {
            boolean end = false;
            while (!end) {
                int n = in.read(bytes.array(), bytes.position(), bytes.remaining());
                end = n < 0;
                bytes.position(bytes.position() + Math.max(n, 0)).flip();
                decode(decoder, bytes, chars, end, letters);
                bytes.compact();
            }
        }
        return letters;
    }

    private static void decode(
            CharsetDecoder decoder, ByteBuffer bytes, CharBuffer chars, boolean end, Letters letters) {
        CoderResult result;
        do {
            result = decoder.decode(bytes, chars, end);
            letters.pass(chars.flip());
            chars.clear();
            if (result.isError()) {
                letters.broken();
                bytes.position(bytes.position() + result.length());
            }
        } while (!result.isUnderflow());
    }

    /** What a file holds when it is read in some encoding. */
    private static final class Letters {
        private static final int WORD = 30;

        private long all;
        private long nulls;
        private long controls;
        private long beyondAscii;
        private long broken;
        private long line = 1;
        private long firstBroken;
        private String example = "";

        void pass(CharBuffer chars) {
            char[] text = chars.array();
            int n = chars.limit();
            all += n;
            for (int i = 0; i < n; i++) {
                char c = text[i];
                if (c < ' ') {
                    control(c);
                } else if (c > '~') {
                    beyondAscii++;
                    example = example.isEmpty() ? word(text, i, n) : example;
                }
            }
        }

        private void control(char c) {
            if (c == '\n') {
                line++;
            } else if (c == 0) {
                nulls++;
            }
            controls += c == '\n' || c == '\r' || c == '\t' ? 0 : 1;
        }

        void broken() {
            broken++;
            firstBroken = firstBroken == 0 ? line : firstBroken;
        }

        private static String word(char[] text, int at, int n) {
            int from = at;
            while (from > 0 && at - from < WORD && Character.isLetterOrDigit(text[from - 1])) {
                from--;
            }
            int to = at + 1;
            while (to < n && to - at < WORD && Character.isLetterOrDigit(text[to])) {
                to++;
            }
            return new String(text, from, to - from);
        }
    }
}
