package quadmean.cli;

/** Exit codes of the program; a verdict such as "target missed" is in the output, never in the code. */
enum ExitCode {
    DONE(0),
    /** Input refused: every problem is listed. */
    REFUSED(1),
    /** Wrong usage, or a named file is missing. */
    USAGE(2),
    /** A defect in the program. */
    DEFECT(70),
    /** The results cannot be written. */
    CANNOT_WRITE(74);

    private final int code;

    ExitCode(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }
}
