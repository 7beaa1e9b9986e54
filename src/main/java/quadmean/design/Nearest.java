package quadmean.design;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that somebody probably meant. */
public final class Nearest {
    /** Longer words are no slips of the pen, and comparing them takes long. */
    private static final int LONGEST = 60;

    private Nearest() {}

    /**
     * The candidate nearest to a word by edit distance, case apart.
     *
     * @return the nearest, or empty if none is near: more than a third of the letters, or all, would have to change
     */
    public static Optional<String> to(String word, Collection<String> candidates) {
        if (word.length() > LONGEST) {
            return Optional.empty();
        }
        String low = word.toLowerCase(Locale.ROOT);
        int most = Math.min(word.length() - 1, (word.length() + 2) / 3); // one letter at least stays
        return candidates.stream()
                .filter(c -> c.length() <= LONGEST)
                .min(Comparator.<String>comparingInt(c -> distance(low, c.toLowerCase(Locale.ROOT)))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(c -> distance(low, c.toLowerCase(Locale.ROOT)) <= most);
    }

    /** Number of letters to insert, delete or change (Levenshtein 1966). */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
