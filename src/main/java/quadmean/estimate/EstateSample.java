package quadmean.estimate;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quadmean.model.DegreesRule;
import quadmean.model.EstateOnePlot;
import quadmean.model.EstateStand;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.MomentSums;

/** The plots of an estate, as sums stand by stand. */
final class EstateSample {
    private final List<EstateStand> stands;
    private final List<@Nullable StandSums> sums;
    private final EstimateSettings settings;
    private final EstateOnePlot onePlot;

    EstateSample(
            List<EstateStand> stands,
            List<@Nullable StandSums> sums,
            EstimateSettings settings,
            EstateOnePlot onePlot) {
        this.stands = stands;
        this.sums = sums;
        this.settings = settings;
        this.onePlot = onePlot;
    }

    EstateStand stand(int i) {
        return stands.get(i);
    }

    @Nullable
    StandSums sums(int stand) {
        return sums.get(stand);
    }

    int plots(int stand) {
        StandSums s = sums.get(stand);
        return s == null ? 0 : s.plots();
    }

    /** Sums of a species, or of all; null where the stand has none of it. */
    @Nullable
    MomentSums sums(int stand, String species) {
        StandSums s = sums.get(stand);
        if (s == null) {
            return null;
        }
        return species.equals(EstimateRow.ALL) ? s.all() : s.of(species);
    }

    /** Adds the species found in a stand to others. */
    void addSpecies(int stand, Set<String> to) {
        StandSums s = sums.get(stand);
        if (s != null) {
            s.addSpecies(to);
        }
    }

    /** Number of plots that have room in a stand, for the finite population correction. */
    double plotsIn(int stand) {
        return settings.finitePopulation()
                .plotsIn(settings.plot(), stands.get(stand).areaHa());
    }

    boolean isPooled() {
        return onePlot == EstateOnePlot.POOL;
    }

    DegreesOfFreedom rule() {
        return settings.degreesRule() == DegreesRule.SATTERTHWAITE
                ? DegreesOfFreedom.SATTERTHWAITE
                : DegreesOfFreedom.UNITS_MINUS_STRATA;
    }

    /** A borrowed variance brings no degrees of freedom of its own; Satterthwaite's count asks how well it is known. */
    double lentDf(double df) {
        return rule() == DegreesOfFreedom.SATTERTHWAITE ? df : 0;
    }

    String onePlotNote(int n) {
        return onePlot == EstateOnePlot.POOL
                ? n + (n == 1 ? " stand has" : " stands have") + " a single plot and no error of "
                        + (n == 1 ? "its" : "their")
                        + " own; in the errors of strata and of the estate such a plot is taken to"
                        + " vary as plots do within the other stands of its stratum (common practice, no source)."
                : n + (n == 1 ? " stand has" : " stands have")
                        + " a single plot: no error is given for the strata with such stands and for the estate.";
    }
}
