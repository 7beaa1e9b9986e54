package quadmean.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import quadmean.audit.TreeMatch.Kind;
import quadmean.model.Plot;
import quadmean.model.Tree;

/**
 * Finds the trees of a plot in two tallies of it: by number, then those left over by species and nearest dbh, then trees without
 * numbers by dbh alone. Pairs are made nearest first, so that the order of rows does not matter.
 */
final class TreeMatcher {
    private final double matchPercent;

    /**
     * A matcher.
     *
     * @param matchPercent largest difference in dbh of trees matched by size, in percent of the checker's
     */
    TreeMatcher(double matchPercent) {
        this.matchPercent = matchPercent;
    }

    /** Every tree of both plots, once. */
    List<TreeMatch> match(String crew, Plot cruised, Plot checked) {
        List<@Nullable Tree> ours = trees(cruised);
        List<@Nullable Tree> theirs = trees(checked);
        List<TreeMatch> found = new ArrayList<>();
        String plot = cruised.id();
        pair(plot, crew, Kind.NUMBER, ours, theirs, TreeMatcher::sameNumber, found);
        pair(plot, crew, Kind.SPECIES_AND_SIZE, ours, theirs, (a, b) -> sameSpecies(a, b) && isNear(a, b), found);
        pair(plot, crew, Kind.SIZE, ours, theirs, (a, b) -> unnumbered(a, b) && isNear(a, b), found);
        theirs.stream()
                .filter(java.util.Objects::nonNull)
                .forEach(t -> found.add(new TreeMatch(plot, crew, Kind.MISSED, null, t)));
        ours.stream()
                .filter(java.util.Objects::nonNull)
                .forEach(t -> found.add(new TreeMatch(plot, crew, Kind.EXTRA, t, null)));
        return found;
    }

    /** Each tree by itself, also where a row stands for several. */
    private static List<@Nullable Tree> trees(Plot plot) {
        List<@Nullable Tree> trees = new ArrayList<>();
        plot.trees().forEach(t -> trees.addAll(Collections.nCopies(t.detail().count(), t)));
        return trees;
    }

    private record Candidate(int ours, int theirs, double distance) {}

    private static void pair(
            String plot,
            String crew,
            Kind kind,
            List<@Nullable Tree> ours,
            List<@Nullable Tree> theirs,
            BiPredicate<Tree, Tree> fits,
            List<TreeMatch> found) {
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < ours.size(); i++) {
            for (int j = 0; j < theirs.size(); j++) {
                Tree a = ours.get(i);
                Tree b = theirs.get(j);
                if (a != null && b != null && fits.test(a, b)) {
                    candidates.add(new Candidate(i, j, (sameSpecies(a, b) ? 0 : 10) + distance(a, b)));
                }
            }
        }
        candidates.sort(Comparator.comparingDouble(Candidate::distance));
        for (Candidate c : candidates) {
            Tree a = ours.get(c.ours);
            Tree b = theirs.get(c.theirs);
            if (a != null && b != null) {
                found.add(new TreeMatch(plot, crew, kind, a, b));
                ours.set(c.ours, null);
                theirs.set(c.theirs, null);
            }
        }
    }

    private static boolean sameNumber(Tree a, Tree b) {
        return !a.number().isEmpty() && a.number().equals(b.number());
    }

    private static boolean sameSpecies(Tree a, Tree b) {
        return a.species().equals(b.species());
    }

    private static boolean unnumbered(Tree a, Tree b) {
        return a.number().isEmpty() && b.number().isEmpty();
    }

    private boolean isNear(Tree a, Tree b) {
        return Math.abs(a.dbhCm() - b.dbhCm()) <= matchPercent / 100 * b.dbhCm();
    }

    /** How far two diameters are apart, as a ratio; 0 for the same. */
    private static double distance(Tree a, Tree b) {
        return Math.abs(Math.log(a.dbhCm() / b.dbhCm()));
    }
}
