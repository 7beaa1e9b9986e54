package quadmean.cli;

import picocli.CommandLine.Help.Ansi;

/** When help and messages on usage are coloured; results never are. */
enum Color {
    /** On a terminal, unless the environment has NO_COLOR. */
    AUTO(Ansi.AUTO),
    NEVER(Ansi.OFF),
    ALWAYS(Ansi.ON);

    private static final String OPTION = "--color";

    private final Ansi ansi;

    Color(Ansi ansi) {
        this.ansi = ansi;
    }

    Ansi ansi() {
        return ansi;
    }

    /** What the arguments ask for, known before they are read as a whole, so that messages about them follow it too. */
    static Color askedFor(String... args) {
        for (int i = 0; i < args.length; i++) {
            for (Color color : values()) {
                boolean isNext = args[i].equals(OPTION) && i + 1 < args.length && color.is(args[i + 1]);
                if (isNext || (args[i].startsWith(OPTION + "=") && color.is(args[i].substring(OPTION.length() + 1)))) {
                    return color;
                }
            }
        }
        return AUTO;
    }

    private boolean is(String word) {
        return name().equalsIgnoreCase(word);
    }
}
