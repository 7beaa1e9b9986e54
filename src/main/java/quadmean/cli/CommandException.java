package quadmean.cli;

/** Ends a command with a message for the user and an exit code. */
final class CommandException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final ExitCode exitCode;

    CommandException(ExitCode exitCode, String message) {
        super(message);
        this.exitCode = exitCode;
    }

    ExitCode exitCode() {
        return exitCode;
    }
}
