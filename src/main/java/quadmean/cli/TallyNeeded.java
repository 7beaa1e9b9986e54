package quadmean.cli;

import quadmean.design.Design;

/** Some commands have nothing to work on without a tally. */
final class TallyNeeded {
    private TallyNeeded() {}

    static void check(Design design, String command) {
        if (design.tallies().isEmpty()) {
            throw new CommandException(
                    ExitCode.USAGE, "\"" + command + "\" needs a tally; add a [[tally]] table to " + design.file());
        }
    }
}
