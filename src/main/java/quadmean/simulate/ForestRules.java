package quadmean.simulate;

import java.util.Optional;

/**
 * How a forest is made where its file leaves something open.
 *
 * @param pattern how generated trees stand
 * @param treesPerClump mean number of trees of a clump, for {@link Pattern#CLUSTERED}
 * @param clumpM how far trees stand from the middle of their clump, as a standard deviation along each axis (m)
 * @param heightScatterPercent how far heights scatter about their class (percent of the height above breast height)
 * @param seed seed of places, sizes and heights
 * @param window ground of a map of trees (m); empty for the box around the trees
 */
public record ForestRules(
        Pattern pattern,
        double treesPerClump,
        double clumpM,
        double heightScatterPercent,
        long seed,
        Optional<Window> window) {
    /** Trees at random, clumps of ten within some five metres, heights without scatter. */
    public static final ForestRules USUAL = new ForestRules(Pattern.RANDOM, 10, 5, 0, 1, Optional.empty());

    /** How generated trees stand. */
    public enum Pattern {
        /** Each wherever chance puts it. */
        RANDOM("random"),
        /** In clumps: middles at random, trees normally around them. */
        CLUSTERED("clustered"),
        /** Each at a distance from all others, as in a plantation that was thinned. */
        REGULAR("regular");

        private final String id;

        Pattern(String id) {
            this.id = id;
        }

        /** The word used on the command line. */
        public String id() {
            return id;
        }
    }

    String words(int trees) {
        String how = pattern == Pattern.CLUSTERED
                ? " in clumps of " + Plain.of(treesPerClump, 3) + " trees within " + Plain.of(clumpM, 3) + " m"
                : "";
        return "The forest is made up from the stand table: " + trees + " trees, pattern " + pattern.id() + how
                + ", seed " + seed + ".";
    }
}
