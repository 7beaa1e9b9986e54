package quadmean.field;

/** Rows of a tally file that hold whole plots, as they lie in the file. */
public final class EstateRange {
    private final EstateFile file;
    private final int index;
    private final byte[] bytes;
    private final int length;
    private final long end;
    private final long firstLine;
    private final long lines;

    /**
     * A part of a file.
     *
     * @param index number of the file among those of the estate
     * @param bytes the rows, from the first byte on
     * @param length how many bytes they are
     * @param end where they end in the file, unpacked
     * @param firstLine line on which they start
     * @param lines how many lines they are
     */
    EstateRange(EstateFile file, int index, byte[] bytes, int length, long end, long firstLine, long lines) {
        this.file = file;
        this.index = index;
        this.bytes = bytes;
        this.length = length;
        this.end = end;
        this.firstLine = firstLine;
        this.lines = lines;
    }

    /** The file. */
    public EstateFile file() {
        return file;
    }

    byte[] bytes() {
        return bytes;
    }

    int length() {
        return length;
    }

    long firstLine() {
        return firstLine;
    }

    /** Where the reading of the file goes on behind it. */
    public EstatePosition after() {
        return new EstatePosition(index, end, firstLine + lines);
    }
}
