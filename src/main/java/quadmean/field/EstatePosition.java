package quadmean.field;

/**
 * A place between two plots of an estate's tally.
 *
 * @param file number of the file, from 0
 * @param offset bytes of the file before it, unpacked; 0 for the start of its rows
 * @param line line on which the next row starts; 0 for the start of the rows
 */
public record EstatePosition(int file, long offset, long line) {
    /** Before everything. */
    public static final EstatePosition START = new EstatePosition(0, 0, 0);
}
