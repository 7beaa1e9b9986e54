package quadmean.simulate;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import quadmean.cruise.RepeatedCruise;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.model.IntervalRule;
import quadmean.model.Problem;
import quadmean.model.Progress;
import quadmean.model.Tally;
import quadmean.units.Basis;

/** Cruises a known forest again and again by one design. Safe to use from several threads. */
public final class Simulator {
    private static final int BLOCK = 64;
    /** Blocks that are worked at once before their sums are added: what memory holds does not grow with the number of cruises. */
    private static final int AT_ONCE = 32;
    /** Odd, as any number to spread seeds must be. */
    private static final long STEP = 0x9E3779B97F4A7C15L;

    private static final int TRIED_AT_ONCE = 8;
    private static final int MOST_TRIED = 800;
    private static final double NANOS = 1e9;
    /** Nanoseconds that a trial of the speed may take. */
    private static final long LONGEST_TRIAL = 3_000_000_000L;

    private final PaperDesign paper;
    private final Forest forest;
    private final PaperCrew crew;
    private final RepeatedCruise cruise;
    private final List<EstimateRow> truth;
    private final List<Problem> problems;

    private Simulator(PaperDesign paper, Forest forest) {
        this.paper = paper;
        this.forest = forest;
        this.crew = new PaperCrew(paper, forest);
        this.cruise = RepeatedCruise.of(paper.design());
        Tally census = crew.census();
        this.problems = cruise.problems(census);
        Set<IntervalRule> rule = EnumSet.of(IntervalRule.STUDENT_T);
        this.truth = problems.isEmpty()
                ? RepeatedCruise.of(PaperDesign.census(paper.design()))
                        .rows(census, rule, 1)
                        .getOrDefault(IntervalRule.STUDENT_T, List.of())
                : List.of();
    }

    /**
     * A design in a forest.
     *
     * @param scale times as many plots as the design has; 1 for the design as it is
     * @throws IllegalArgumentException with a sentence for the user if such cruises cannot be run
     */
    public static Simulator of(Design design, Forest forest, double scale) {
        Forest tallied = forest.from(PaperChecks.smallestDbhCm(design));
        PaperChecks.check(design, tallied);
        PaperDesign paper = PaperDesign.of(design, tallied, scale);
        PaperChecks.layout(paper, tallied);
        return new Simulator(paper, tallied);
    }

    /** What is against such cruises: a species without a volume equation. */
    public List<Problem> problems() {
        return problems;
    }

    /** The design on the ground of the forest. */
    public Design design() {
        return paper.design();
    }

    /** What the forest really holds: rows of the whole stand by a complete tally. */
    public List<EstimateRow> truth() {
        return truth;
    }

    /**
     * About how long cruises will take on this machine.
     *
     * @param cruises how many
     * @return seconds
     */
    public double seconds(long cruises, Set<IntervalRule> rules) {
        long begin = System.nanoTime();
        double best = Double.POSITIVE_INFINITY; // the first cruises are slow, until the machine knows the code
        for (long at = 0; at < MOST_TRIED && System.nanoTime() - begin < LONGEST_TRIAL; at += TRIED_AT_ONCE) {
            long from = at;
            long start = System.nanoTime();
            LongStream.range(from, from + TRIED_AT_ONCE).parallel().forEach(i -> rows(0, i, rules));
            best = Math.min(best, (System.nanoTime() - start) / NANOS / TRIED_AT_ONCE);
        }
        return best * cruises;
    }

    /** What one cruise takes. */
    Cost cost(long seed) {
        return CostOfCruise.of(paper, forest, crew, seed);
    }

    private SplittableRandom random(long seed, long cruiseNumber) {
        return new SplittableRandom(new SplittableRandom(seed + STEP * cruiseNumber).nextLong());
    }

    /** The rows that one cruise ends with. */
    Map<IntervalRule, List<EstimateRow>> rows(long seed, long cruiseNumber, Set<IntervalRule> rules) {
        SplittableRandom random = random(seed, cruiseNumber);
        return cruise.rows(crew.cruise(random).tally(), rules, random.nextLong());
    }

    /**
     * Runs cruises, on as many processors as there are.
     *
     * @param cruises how many, 2 or more
     * @param seed seed; the same gives the same result whatever the number of threads
     * @param rules ways to make confidence limits
     * @param progress told how many blocks of cruises are done
     */
    public SimulationResult run(long cruises, long seed, Set<IntervalRule> rules, Progress progress) {
        List<OutcomeSums> sums = sums(rules, (int) Math.min(cruises, BLOCK), seed);
        long blocks = (cruises + BLOCK - 1) / BLOCK;
        AtomicInteger done = new AtomicInteger();
        for (long from = 0; from < blocks; from += AT_ONCE) {
            long first = from;
            int now = (int) Math.min(AT_ONCE, blocks - from);
            IntStream.range(0, now)
                    .parallel()
                    .mapToObj(b -> {
                        List<OutcomeSums> part = block(sums, first + b, cruises, seed, rules);
                        progress.report(Progress.Work.CRUISES, done.incrementAndGet(), Math.toIntExact(blocks));
                        return part;
                    })
                    .toList()
                    .forEach(part -> add(sums, part));
        }
        List<AttributeOutcome> outcomes =
                new ArrayList<>(sums.stream().map(OutcomeSums::outcome).toList());
        outcomes.sort((a, b) -> Boolean.compare(isTarget(b), isTarget(a)));
        Cost cost = cost(seed);
        return new SimulationResult(paper.design(), paper.total(), cruises, seed, outcomes, cost, notes(cost));
    }

    private boolean isTarget(AttributeOutcome outcome) {
        return outcome.attribute() == paper.design().targetAttribute();
    }

    /** Empty sums of what is known of the forest, their histograms sized by a first few cruises. */
    private List<OutcomeSums> sums(Set<IntervalRule> rules, int few, long seed) {
        List<OutcomeSums> sums = new ArrayList<>();
        for (EstimateRow row : truth) {
            if (row.basis() != Basis.TOTAL && Double.isFinite(row.mean()) && row.mean() > 0) {
                sums.add(new OutcomeSums(
                        row.attribute(), row.basis(), row.mean(), Double.NaN, paper.step(row.attribute()), rules));
            }
        }
        for (int i = 0; i < few; i++) {
            Map<IntervalRule, List<EstimateRow>> rows = rows(seed, i, rules);
            sums.forEach(s -> s.add(rows));
        }
        return sums.stream().map(s -> s.sized(rules)).toList();
    }

    private List<OutcomeSums> block(
            List<OutcomeSums> like, long block, long cruises, long seed, Set<IntervalRule> rules) {
        List<OutcomeSums> own = like.stream().map(OutcomeSums::empty).toList();
        long end = Math.min(cruises, (block + 1) * BLOCK);
        for (long i = block * BLOCK; i < end; i++) {
            Map<IntervalRule, List<EstimateRow>> rows = rows(seed, i, rules);
            own.forEach(s -> s.add(rows));
        }
        return own;
    }

    private static void add(List<OutcomeSums> sums, List<OutcomeSums> part) {
        for (int k = 0; k < part.size(); k++) {
            sums.get(k).add(part.get(k));
        }
    }

    private List<String> notes(Cost cost) {
        List<String> notes = new ArrayList<>(forest.notes());
        notes.addAll(PaperChecks.notes(paper.design(), forest));
        if (CostOfCruise.isWithoutWalk(paper.design(), cost)) {
            notes.add("A walk over so many plots is not worked out: the hours of \""
                    + paper.design().name() + "\" are without it.");
        }
        if (PaperChecks.isIntegrated(paper)) {
            notes.add(GridIntegral.of(paper, forest).words(paper.design().units()));
        }
        return notes;
    }
}
