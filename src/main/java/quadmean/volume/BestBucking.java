package quadmean.volume;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import quadmean.volume.StemCuts.Choice;
import quadmean.volume.StemCuts.Fit;

/**
 * Cuts a stem so that its logs fetch most (dynamic programming, Bellman 1957, over the places where a cut can fall). At
 * each place, from the top down, the best of: a log, a piece left between logs, or the end. Where two ways fetch the
 * same, the one with fewer logs is taken, then the product and length named first, seen from the butt. The result is
 * the best of all ways on that grid; a log whose value is not known counts as worth nothing.
 */
final class BestBucking {
    /** Values nearer than this share are equal: rounding of doubles. */
    private static final double EQUAL = 1e-9;

    /**
     * The best that can be done from a place up.
     *
     * @param value what the logs fetch
     * @param logs number of logs
     * @param choice log that begins here; null if none does
     * @param next where to go on; -1 at the end
     */
    private record Plan(double value, int logs, @Nullable Choice choice, long next) {
        static final Plan END = new Plan(0, 0, null, -1);

        boolean beats(Plan other) {
            double equal = EQUAL * Math.max(value, other.value);
            return value > other.value + equal || (value >= other.value - equal && logs < other.logs);
        }
    }

    private final StemCuts cuts;
    private final long wasteStep;
    private final Map<Long, Plan> plans = new HashMap<>();

    private BestBucking(StemCuts cuts, long wasteStep) {
        this.cuts = cuts;
        this.wasteStep = wasteStep;
    }

    /** The logs, butt log first. */
    static List<CutLog> logs(StemCuts cuts, long wasteStep) {
        BestBucking best = new BestBucking(cuts, wasteStep);
        for (long place : best.places().descendingSet()) {
            best.plans.put(place, best.from(place));
        }
        return best.walk();
    }

    private NavigableSet<Long> places() {
        long[] steps = LongStream.concat(cuts.choices().stream().mapToLong(Choice::uses), LongStream.of(wasteStep))
                .distinct()
                .toArray();
        NavigableSet<Long> places = new TreeSet<>(List.of(0L));
        for (Long place = 0L; place != null; place = places.higher(place)) {
            for (long step : steps) {
                if (place + step <= cuts.room()) {
                    places.add(place + step);
                }
            }
        }
        return places;
    }

    private Plan from(long place) {
        Plan best = Plan.END;
        for (Choice choice : cuts.choices()) {
            if (cuts.fit(choice, place) == Fit.FITS) {
                double value = cuts.log(choice, place, 0).value();
                Plan rest = at(place + choice.uses());
                Plan plan = new Plan(
                        (Double.isNaN(value) ? 0 : value) + rest.value, rest.logs + 1, choice, place + choice.uses());
                best = plan.beats(best) ? plan : best;
            }
        }
        Plan above = at(place + wasteStep);
        Plan waste = new Plan(above.value, above.logs, null, place + wasteStep);
        return waste.beats(best) ? waste : best;
    }

    private Plan at(long place) {
        return plans.getOrDefault(place, Plan.END);
    }

    private List<CutLog> walk() {
        List<CutLog> logs = new ArrayList<>();
        long place = 0;
        while (place >= 0) {
            Plan plan = at(place);
            if (plan.choice != null) {
                logs.add(cuts.log(plan.choice, place, logs.size() + 1));
            }
            place = plan.next;
        }
        return logs;
    }
}
