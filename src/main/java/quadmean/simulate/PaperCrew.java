package quadmean.simulate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.design.LayoutSettings.Extent;
import quadmean.layout.LaidPlot;
import quadmean.layout.PlotLayout;
import quadmean.model.CountedTrees;
import quadmean.model.FieldHeight;
import quadmean.model.HeightSource;
import quadmean.model.ListedPlot;
import quadmean.model.MappedTree;
import quadmean.model.Measuring;
import quadmean.model.Plot;
import quadmean.model.PlotDesign;
import quadmean.model.PlotFacts;
import quadmean.model.RowCount;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.model.TreeDetail;
import quadmean.model.TreeStatus;
import quadmean.simulate.PlotTaker.Seen;

/** Cruises a known forest on paper by a design: lays out plots, takes them, and writes the tally. Safe to use from several threads. */
final class PaperCrew {
    private static final String FILE = "forest";

    private final PaperDesign paper;
    private final Design design;
    private final Forest forest;
    private final Predictions predictions;
    private final FieldHeight @Nullable [] heights;
    private final Map<String, Integer> species = new HashMap<>();
    private final Map<String, Ground> grounds;
    private final List<String> codes;
    private final @Nullable PlotTaker taker;

    PaperCrew(PaperDesign paper, Forest forest) {
        this.paper = paper;
        this.design = paper.design();
        this.forest = forest;
        this.predictions = new Predictions(design);
        this.grounds = forest.strata();
        this.codes = List.copyOf(grounds.keySet());
        this.taker = design.plot() instanceof PlotDesign.Complete ? null : PlotTaker.of(design, forest);
        boolean isMeasured = !design.volumes().isEmpty() && forest.hasHeights();
        this.heights = isMeasured
                ? forest.trees().stream()
                        .map(t -> new FieldHeight(t.heightM(), HeightSource.MEASURED, "height", ""))
                        .toArray(FieldHeight[]::new)
                : null;
        forest.trees().forEach(t -> species.putIfAbsent(t.species(), species.size()));
    }

    /** One cruise. */
    PaperTally cruise(SplittableRandom random) {
        return taker == null ? new Round(random).complete() : new Round(random).plots(taker);
    }

    /** Every tree with its height, stratum by stratum: the truth. */
    Tally census() {
        List<Plot> plots = new ArrayList<>();
        for (int s = 0; s < codes.size(); s++) {
            List<Tree> trees = new ArrayList<>();
            for (int i = 0; i < forest.trees().size(); i++) {
                if (forest.stratumOf(i) == s) {
                    trees.add(tree(i, codes.get(s), heights == null ? null : heights[i], TreeDetail.PLAIN));
                }
            }
            plots.add(new Plot(codes.get(s), codes.get(s), trees));
        }
        return tally(plots, List.of());
    }

    private Tree tree(int i, String plot, @Nullable FieldHeight height, TreeDetail detail) {
        MappedTree t = forest.trees().get(i);
        return new Tree(FILE, t.row(), plot, "", t.species(), t.dbhCm(), height, detail);
    }

    private Ground ground(String stratum) {
        return Objects.requireNonNull(grounds.get(stratum));
    }

    private static Tally tally(List<Plot> plots, List<ListedPlot> listed) {
        long rows = plots.stream()
                .mapToLong(p -> p.trees().size() + p.counted().size())
                .sum();
        return new Tally(plots, new RowCount(rows, rows, 0, 0), List.of(), listed);
    }

    private static TreeDetail detail(int times, double prediction) {
        return times == 1 && prediction == 0
                ? TreeDetail.PLAIN
                : new TreeDetail(
                        1,
                        TreeStatus.LIVE,
                        TreeDetail.Top.WHOLE,
                        TreeDetail.PLAIN.logs(),
                        TreeDetail.PLAIN.merchantableM(),
                        "",
                        0,
                        times,
                        prediction,
                        TreeDetail.PLAIN.distanceM(),
                        TreeDetail.PLAIN.reach());
    }

    /** The work on one tally. */
    private final class Round {
        private final SplittableRandom random;
        private final int[] count = new int[species.size()];
        private final int every = design.sheets().heightEvery();
        private final int first;
        private int measured;
        private int counted;
        private int heightsTaken;

        Round(SplittableRandom random) {
            this.random = random;
            this.first = random.nextInt(every);
        }

        PaperTally complete() {
            List<Plot> plots = new ArrayList<>();
            for (int s = 0; s < codes.size(); s++) {
                List<Seen> all = new ArrayList<>();
                for (int i = 0; i < forest.trees().size(); i++) {
                    if (forest.stratumOf(i) == s) {
                        all.add(new Seen(i, 1, 1));
                    }
                }
                plots.add(plot(codes.get(s), codes.get(s), all));
            }
            return new PaperTally(tally(plots, List.of()), List.of(), plots.size(), measured, counted, heightsTaken);
        }

        PaperTally plots(PlotTaker plotTaker) {
            List<LaidPlot> laid = PlotLayout.lay(
                            paper.layout(), forest.tract(), paper.plots(), plotTaker.farthestM(), random.nextLong())
                    .plots();
            boolean[] visit = visits(laid);
            boolean isWhole = paper.layout().extent() == Extent.TRACT;
            List<Plot> plots = new ArrayList<>();
            List<ListedPlot> listed = new ArrayList<>();
            List<LaidPlot> places = new ArrayList<>();
            for (int p = 0; p < laid.size(); p++) {
                LaidPlot place = laid.get(p);
                String id = String.valueOf(p + 1);
                Ground ground = isWhole ? forest.whole() : ground(place.stratum());
                List<Seen> seen =
                        plotTaker.at(place.at().x, place.at().y, ground, isWhole ? -1 : codes.indexOf(place.stratum()));
                PlotFacts facts = facts(place, seen, visit[p]);
                if (!facts.equals(PlotFacts.NONE)) {
                    listed.add(new ListedPlot(id, place.stratum(), facts));
                }
                if (visit[p]) {
                    plots.add(plot(id, place.stratum(), seen));
                    places.add(place);
                }
            }
            return new PaperTally(tally(plots, listed), places, plots.size(), measured, counted, heightsTaken);
        }

        /** Of double sampling those drawn to be visited, stratum by stratum; else all. */
        private boolean[] visits(List<LaidPlot> laid) {
            boolean[] visit = new boolean[laid.size()];
            if (!design.estimation().estimation().estimator().isDouble()) {
                java.util.Arrays.fill(visit, true);
                return visit;
            }
            Map<String, int[]> left = new HashMap<>();
            laid.forEach(p -> left.computeIfAbsent(p.stratum(), s ->
                    new int[] {0, paper.visited().getOrDefault(s, 0)})[0]++);
            for (int p = 0; p < visit.length; p++) {
                int[] rest = Objects.requireNonNull(left.get(laid.get(p).stratum()));
                visit[p] = random.nextInt(rest[0]) < rest[1];
                rest[0]--;
                rest[1] -= visit[p] ? 1 : 0;
            }
            return visit;
        }

        private PlotFacts facts(LaidPlot place, List<Seen> seen, boolean isVisited) {
            var estimator = design.estimation().estimation().estimator();
            PlotFacts facts = PlotFacts.NONE;
            if (estimator.isDouble()) {
                PlotFacts.Phase phase = isVisited ? PlotFacts.Phase.BOTH : PlotFacts.Phase.FIRST_ONLY;
                facts = new PlotFacts(phase, Double.NaN, "", Double.NaN, "", Double.NaN, 1, null, Double.NaN);
            }
            if (estimator.needsAuxiliary()) {
                facts = facts.withAuxiliary(Auxiliary.of(design, forest, seen, random));
            }
            if (estimator.isClustered() && place.cluster().isPresent()) {
                facts = facts.withCluster(String.valueOf(place.cluster().getAsInt()), Double.NaN);
            }
            if (place.row().isPresent() && place.column().isPresent()) {
                facts = facts.withPlace(place.row().getAsInt(), place.column().getAsInt());
            }
            return facts;
        }

        private Plot plot(String id, String stratum, List<Seen> seen) {
            List<Tree> trees = new ArrayList<>(seen.size());
            List<CountedTrees> counts = new ArrayList<>();
            Measuring measuring = design.plot().measuring();
            boolean here = !(measuring instanceof Measuring.SomePoints some)
                    || some.points().contains(id);
            for (Seen s : seen) {
                double prediction = 0;
                int times = here ? s.measuredTimes() : 0;
                if (measuring instanceof Measuring.ThreeP threeP) {
                    prediction = predictions.of(forest.trees().get(s.tree()), random);
                    times = prediction > threeP.limit() * random.nextDouble() ? s.times() : 0;
                }
                if (times > 0) {
                    trees.add(tree(s.tree(), id, height(s.tree()), detail(times, prediction)));
                    measured++;
                }
                if (times < s.times()) {
                    MappedTree t = forest.trees().get(s.tree());
                    counts.add(new CountedTrees(FILE, t.row(), t.species(), detail(s.times() - times, prediction)));
                    counted++;
                }
            }
            return new Plot(id, stratum, trees, counts);
        }

        /** The height of every so many-th measured tree of a species, from a start that nobody chose. */
        private @Nullable FieldHeight height(int tree) {
            if (heights == null) {
                return null;
            }
            int s = species.getOrDefault(forest.trees().get(tree).species(), 0);
            if (count[s]++ % every != first) {
                return null;
            }
            heightsTaken++;
            return heights[tree];
        }
    }
}
