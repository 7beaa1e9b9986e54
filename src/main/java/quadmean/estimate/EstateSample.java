package quadmean.estimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import quadmean.model.DegreesRule;
import quadmean.model.EstateOnePlot;
import quadmean.model.EstateStand;
import quadmean.stats.DegreesOfFreedom;
import quadmean.stats.MomentSums;
import quadmean.stats.Moments;

/** The plots of an estate, as sums stand by stand. */
final class EstateSample {
    /** In place of an attribute: what basal area is beyond a multiple of trees. */
    static final int BEYOND = -1;

    private final List<EstateStand> stands;
    private final List<@Nullable StandSums> sums;
    private final EstimateSettings settings;
    private final EstateOnePlot onePlot;
    private final Map<String, List<Integer>> strata = new HashMap<>();
    private final Map<Question, Pooled> pooled = new ConcurrentHashMap<>();

    /**
     * What varies.
     *
     * @param ratio the multiple of trees where it is {@link #BEYOND}; NaN else
     */
    private record Question(String stratum, String species, int attribute, double ratio) {}

    /**
     * Variance between plots within the stands of a stratum.
     *
     * @param variance Σ(n - 1)·s² / Σ(n - 1); NaN where every stand has one plot
     * @param df Σ(n - 1)
     */
    record Pooled(double variance, double df) {}

    EstateSample(
            List<EstateStand> stands,
            List<@Nullable StandSums> sums,
            EstimateSettings settings,
            EstateOnePlot onePlot) {
        this.stands = stands;
        this.sums = sums;
        this.settings = settings;
        this.onePlot = onePlot;
        for (int i = 0; i < stands.size(); i++) {
            strata.computeIfAbsent(stands.get(i).stratum(), k -> new ArrayList<>())
                    .add(i);
        }
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

    /** Moments where no plot has any. */
    static Moments nothing(int plots) {
        return new Moments(plots, 0, plots < 2 ? Double.NaN : 0);
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
    double lentDf(Pooled lent) {
        return rule() == DegreesOfFreedom.SATTERTHWAITE ? lent.df() : 0;
    }

    /** How plots vary within the stands of a stratum. */
    Pooled pooled(String stratum, String species, int attribute, double ratio) {
        return pooled.computeIfAbsent(new Question(stratum, species, attribute, ratio), this::pool);
    }

    private Pooled pool(Question question) {
        double squares = 0;
        double df = 0;
        for (int i : strata.getOrDefault(question.stratum(), List.of())) {
            int n = plots(i);
            if (n > 1) {
                MomentSums s = sums(i, question.species());
                squares += s == null ? 0 : (n - 1) * moments(s, n, question).variance();
                df += n - 1;
            }
        }
        return new Pooled(df == 0 ? Double.NaN : squares / df, df);
    }

    private static Moments moments(MomentSums s, int n, Question question) {
        return question.attribute() == BEYOND ? s.beyond(question.ratio(), n) : s.moments(question.attribute(), n);
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
