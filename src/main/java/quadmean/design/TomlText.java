package quadmean.design;

import java.util.Locale;

/** Texts as TOML writes them. */
public final class TomlText {
    private TomlText() {}

    /** A text in quotes, with what must be escaped escaped. */
    public static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').append((char) c);
            } else if (c < ' ' || c == 0x7F) {
                quoted.append(String.format(Locale.ROOT, "\\u%04X", c));
            } else {
                quoted.append((char) c);
            }
        });
        return quoted.append('"').toString();
    }

    /** A text that is safe in a comment: on one line. */
    public static String comment(String text) {
        return text.replaceAll("\\p{Cntrl}", " ");
    }
}
