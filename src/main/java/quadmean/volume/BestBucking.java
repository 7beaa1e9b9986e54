package quadmean.volume;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
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

        boolean isBeatenBy(double otherValue, int otherLogs) {
            double equal = EQUAL * Math.max(otherValue, value);
            return otherValue > value + equal || (otherValue >= value - equal && otherLogs < logs);
        }
    }

    private final StemCuts cuts;
    private final long wasteStep;
    private final long[] places;
    private final Plan[] plans;

    private BestBucking(StemCuts cuts, long wasteStep) {
        this.cuts = cuts;
        this.wasteStep = wasteStep;
        this.places = places(cuts, wasteStep);
        this.plans = new Plan[places.length];
    }

    /** The logs, butt log first. */
    static List<CutLog> logs(StemCuts cuts, long wasteStep) {
        BestBucking best = new BestBucking(cuts, wasteStep);
        for (int i = best.places.length - 1; i >= 0; i--) {
            best.plans[i] = best.from(best.places[i]);
        }
        return best.walk();
    }

    /** Where a cut can fall, from the stump up. */
    private static long[] places(StemCuts cuts, long wasteStep) {
        long[] steps = LongStream.concat(cuts.choices().stream().mapToLong(Choice::uses), LongStream.of(wasteStep))
                .distinct()
                .toArray();
        long unit = LongStream.of(steps).reduce(0, BestBucking::commonDivisor);
        BitSet reached = new BitSet();
        reached.set(0);
        for (int place = 0; place >= 0; place = reached.nextSetBit(place + 1)) {
            for (long step : steps) {
                if (place * unit + step <= cuts.room()) {
                    reached.set(Math.toIntExact(place + step / unit));
                }
            }
        }
        return reached.stream().mapToLong(place -> place * unit).toArray();
    }

    private static long commonDivisor(long a, long b) {
        return b == 0 ? a : commonDivisor(b, a % b);
    }

    private Plan from(long place) {
        Plan best = Plan.END;
        double large = cuts.largeEndCm(place);
        for (Choice choice : cuts.choices()) {
            double small = cuts.smallEndCm(choice, place);
            if (cuts.fit(choice, place, large, small) == Fit.FITS) {
                double value = cuts.value(choice, place, large, small);
                Plan rest = at(place + choice.uses());
                double all = (Double.isNaN(value) ? 0 : value) + rest.value;
                if (best.isBeatenBy(all, rest.logs + 1)) {
                    best = new Plan(all, rest.logs + 1, choice, place + choice.uses());
                }
            }
        }
        Plan above = at(place + wasteStep);
        return best.isBeatenBy(above.value, above.logs)
                ? new Plan(above.value, above.logs, null, place + wasteStep)
                : best;
    }

    private Plan at(long place) {
        int found = Arrays.binarySearch(places, place);
        return found < 0 ? Plan.END : plans[found];
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
