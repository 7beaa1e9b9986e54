package quadmean.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quadmean.chart.Wording;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.StandStatistic;
import quadmean.estimate.Statistic;
import quadmean.height.CurveFit;
import quadmean.height.HeightCurve;
import quadmean.height.HeightedTree;
import quadmean.height.SpeciesCurve;
import quadmean.model.HeightSource;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.units.Attribute;

/** Counts and look-ups in a cruise result that several outputs need. */
final class Facts {
    private Facts() {}

    /** How far what stands behind a row can be trusted; empty where nothing does or all of it is verified. */
    static String standing(CruiseResult result, EstimateRow row) {
        return Wording.standing(result.used(), row.attribute(), row.species());
    }

    /** The same for a stand statistic. */
    static String standing(CruiseResult result, StandStatistic s) {
        return s.statistic() == Statistic.VOLUME_PER_TREE
                ? Wording.standing(result.used(), Attribute.VOLUME, EstimateRow.ALL)
                : "";
    }

    /** What stands behind an attribute's estimates and how far it can be trusted, as a sentence; empty where nothing needs saying. */
    static String standingSentence(CruiseResult result, Attribute attribute) {
        String standing = Wording.standing(result.used(), attribute, EstimateRow.ALL);
        return standing.isEmpty() ? "" : Wording.capital(Wording.standsBehind(attribute)) + ": " + standing + ".";
    }

    /** Whether a height was filled from a curve outside the diameters that the curve was fitted to. */
    static boolean isExtrapolated(HeightedTree t) {
        return t.reach() == HeightedTree.Reach.EXTRAPOLATED;
    }

    /** The trees whose heights are extrapolated, in tally order. */
    static List<HeightedTree> extrapolated(CruiseResult result) {
        return result.trees().stream().filter(Facts::isExtrapolated).toList();
    }

    /** Whether a fit is the curve in use for its own species. */
    static boolean isChosen(SpeciesCurve search, CurveFit tried) {
        HeightCurve chosen = search.chosen();
        return chosen != null && search.isOwn() && chosen.form() == tried.form();
    }

    /** Number of trees by where their height came from; every source has an entry. */
    static Map<HeightSource, Long> heightSources(CruiseResult result) {
        Map<HeightSource, Long> counts = new EnumMap<>(HeightSource.class);
        for (HeightSource source : HeightSource.values()) {
            counts.put(
                    source,
                    result.trees().stream().filter(t -> t.source() == source).count());
        }
        return counts;
    }

    /** Number of problems by rule, in the order of the catalogue. */
    static Map<Rule, Long> problemsByRule(CruiseResult result) {
        Map<Rule, Long> counts = new TreeMap<>();
        for (Problem p : result.tally().problems()) {
            counts.merge(p.rule(), 1L, Long::sum);
        }
        return counts;
    }

    /** Number of plots in a stratum. */
    static long plots(CruiseResult result, String stratum) {
        return result.tally().plots().stream()
                .filter(p -> p.stratum().equals(stratum))
                .count();
    }
}
