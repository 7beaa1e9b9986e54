package quadmean.design;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** How the letters of a text file are stored. */
public enum Encoding {
    UTF_8("utf-8", StandardCharsets.UTF_8),
    /** What spreadsheets in western languages call ANSI; Latin-1 is part of it. */
    WINDOWS_1252("windows-1252", Charset.forName("windows-1252")),
    /** Either byte order; the byte order mark says which. */
    UTF_16("utf-16", StandardCharsets.UTF_16);

    private final String id;
    private final Charset charset;

    Encoding(String id, Charset charset) {
        this.id = id;
        this.charset = charset;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** How Java reads it. */
    public Charset charset() {
        return charset;
    }
}
