package quadmean.design;

import org.jspecify.annotations.Nullable;

/**
 * What a design says of how a tally is written. What is null the file itself must show.
 *
 * @param encoding how letters are stored
 * @param separator what parts the fields
 * @param decimal the decimal mark
 * @param sheet name of the sheet with the trees, empty for the first sheet
 * @param plotsSheet name of the sheet with the plots, empty if there is none
 */
public record TallyFormat(
        @Nullable Encoding encoding,
        @Nullable Character separator,
        @Nullable Character decimal,
        String sheet,
        String plotsSheet) {
    /** Everything is left to the file. */
    public static final TallyFormat OPEN = new TallyFormat(null, null, null, "", "");

    /** The same with separator and decimal mark as found. */
    public TallyFormat with(char foundSeparator, char foundDecimal) {
        return new TallyFormat(encoding, foundSeparator, foundDecimal, sheet, plotsSheet);
    }
}
