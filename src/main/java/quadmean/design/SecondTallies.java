package quadmean.design;

import java.nio.file.Path;
import java.util.List;
import quadmean.model.Rule;

/** Tallies beside those of the cruise: a checker's, or those of an earlier date. */
final class SecondTallies {
    private SecondTallies() {}

    /**
     * Reads the {@code tally} tables of a section.
     *
     * @param cruise the tallies of the cruise, which none of them may be
     * @param needed what is missing if there are none
     */
    static List<TallyFile> parse(Section s, Path designFile, List<TallyFile> cruise, String needed) {
        List<TallyFile> tallies = TallyParser.parse(s, designFile);
        if (tallies.isEmpty()) {
            s.problem(Rule.DESIGN_MISSING, "tally", "", needed + " is missing");
        }
        for (TallyFile tally : tallies) {
            if (TallyPaths.isAmong(tally.path(), cruise)) {
                s.problem(
                        Rule.DESIGN_VALUE, "tally", tally.name(), tally.name() + " is the tally of the cruise itself");
            }
        }
        return tallies;
    }
}
