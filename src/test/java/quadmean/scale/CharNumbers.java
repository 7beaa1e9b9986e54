package quadmean.scale;

/** Numbers in a slice of letters, without making text of them. */
final class CharNumbers {
    /** So many digits make a whole number that a double holds exactly. */
    private static final int EXACT_DIGITS = 15;

    private static final double[] POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private CharNumbers() {}

    /**
     * The double nearest to a decimal number; an empty slice is NaN. A plain number of up to 15 digits is one exact division,
     * rounded once (Clinger 1990, from memory); whatever else is left to the JDK.
     *
     * @throws NumberFormatException if it is no number
     */
    static double parse(char[] letters, int offset, int length) {
        if (length == 0) {
            return Double.NaN;
        }
        long digits = 0;
        int count = 0;
        int decimals = -1;
        int start = letters[offset] == '-' ? 1 : 0;
        for (int i = start; i < length; i++) {
            char c = letters[offset + i];
            if (c >= '0' && c <= '9' && count < EXACT_DIGITS) {
                digits = digits * 10 + (c - '0');
                count++;
            } else if (c == '.' && decimals < 0) {
                decimals = count;
            } else {
                return Double.parseDouble(new String(letters, offset, length));
            }
        }
        if (count == 0) {
            throw new NumberFormatException("no digits in " + new String(letters, offset, length));
        }
        double value = decimals < 0 ? digits : digits / POWERS[count - decimals];
        return start == 0 ? value : -value;
    }
}
