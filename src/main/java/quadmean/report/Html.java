package quadmean.report;

/** Builds a page piece by piece. What comes from files goes through {@link #text}; markup through {@link #raw}. */
final class Html {
    private final StringBuilder page = new StringBuilder();

    /** Text with the five characters escaped that mean something in HTML. */
    static String escape(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(isAllowed(c) ? c : 0xFFFD);
            }
        });
        return out.toString();
    }

    /** Control characters other than tab and line ends have no place in a page. */
    private static boolean isAllowed(int c) {
        return (c >= 0x20 && c != 0x7F) || c == '\t' || c == '\n' || c == '\r';
    }

    Html raw(String markup) {
        page.append(markup);
        return this;
    }

    Html text(String text) {
        return raw(escape(text));
    }

    /** An element with text in it. */
    Html element(String tag, String text) {
        return raw("<" + tag + ">").text(text).raw("</" + tag + ">\n");
    }

    /** An element of a class with text in it. */
    Html element(String tag, String cssClass, String text) {
        return raw("<" + tag + " class=\"" + cssClass + "\">").text(text).raw("</" + tag + ">\n");
    }

    /** Lines as they stand in a file; those that are too long scroll, by key too. */
    Html code(String lines) {
        return raw("<pre tabindex=\"0\">").text(lines).raw("</pre>\n");
    }

    /** The start of a section, with its heading. */
    Html section(String id, String heading) {
        return raw("<section id=\"" + id + "\">\n").element("h2", heading);
    }

    Html endSection() {
        return raw("</section>\n");
    }

    /** The start of a part that unfolds. */
    Html details(String summary) {
        return raw("<details>\n").element("summary", summary);
    }

    /** The start of a part that unfolds, and that is printed even when folded. */
    Html printedDetails(String summary) {
        return raw("<details class=\"paper\">\n").element("summary", summary);
    }

    Html endDetails() {
        return raw("</details>\n");
    }

    @Override
    public String toString() {
        return page.toString();
    }
}
