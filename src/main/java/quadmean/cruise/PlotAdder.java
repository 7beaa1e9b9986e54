package quadmean.cruise;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.estimate.PlotSums;
import quadmean.estimate.StandSums;
import quadmean.estimate.Stem;
import quadmean.estimate.TreeShares;
import quadmean.field.EstateRows;
import quadmean.field.EstateSink;
import quadmean.field.RowFindings;
import quadmean.height.FillingCurves;
import quadmean.model.FieldHeight;
import quadmean.model.Policy;
import quadmean.model.Rule;
import quadmean.model.Tree;
import quadmean.model.TreeDetail.Top;
import quadmean.units.Attribute;

/** The second pass over an estate: fills heights, works trees out, and adds plots up stand by stand. One serves one thread. */
final class PlotAdder implements EstateSink {
    private final EstateJob job;
    private final Design design;
    private final List<FillingCurves> curves;
    private final List<Woods> woods = new ArrayList<>();
    private final TreeShares shares;
    private final Map<Integer, List<String>> remarked = new HashMap<>();
    private final PlotSums plot;
    private final double[] room;
    private Map<Integer, StandSums> sums = new HashMap<>();
    private List<EstatePart.PlotStart> plots = new ArrayList<>();
    private Map<String, Long> remarks = new TreeMap<>();
    private int stand;
    private @Nullable StandSums sumsUnderway;
    private int standUnderway;

    /**
     * An adder.
     *
     * @param curves for each region its curves
     */
    PlotAdder(EstateJob job, List<FillingCurves> curves) {
        this.job = job;
        this.design = job.design();
        this.curves = curves;
        this.shares = new TreeShares(design.plot(), design.attributes());
        curves.forEach(c -> woods.add(new Woods(design, job.books(), c)));
        this.plot = new PlotSums(job.attributes());
        this.room = new double[job.attributes()];
    }

    /** What was added up since the last call. */
    EstatePart take(EstateRows rows) {
        Map<Attribute, Set<String>> missing = new EnumMap<>(Attribute.class);
        woods.forEach(w -> w.reasons()
                .forEach((a, why) ->
                        missing.computeIfAbsent(a, k -> new TreeSet<>()).addAll(why)));
        EstatePart part = new EstatePart(rows, sums, plots, remarks, missing);
        sums = new HashMap<>();
        sumsUnderway = null;
        plots = new ArrayList<>();
        remarks = new TreeMap<>();
        return part;
    }

    @Override
    public int stand(String code) {
        return job.stand(code);
    }

    @Override
    public int kind(int ofStand) {
        return job.regionOf(ofStand);
    }

    @Override
    public void begin(int ofStand, String id, long line) {
        stand = ofStand;
        plots.add(new EstatePart.PlotStart(ofStand, id, line));
        plot.clear();
    }

    @Override
    public int work(int ofStand, Tree tree, Use use, RowFindings problems) {
        int region = job.regionOf(ofStand);
        Tree used = hasEquation(tree, problems) ? checked(tree, curves.get(region), problems) : null;
        if (used == null) {
            return OUT;
        }
        Woods wood = woods.get(region);
        Stem stem = wood.stem(curves.get(region).fill(used));
        List<String> found = wood.takeRemarks();
        int number = use == Use.AGAIN ? shares.keep(stem) : shares.once(stem);
        if (found.isEmpty()) {
            remarked.remove(number);
        } else {
            remarked.put(number, found);
        }
        return number;
    }

    private boolean hasEquation(Tree tree, RowFindings problems) {
        var volumes = job.books().volumes();
        if (volumes.isEmpty() || volumes.find(tree.species()).isPresent()) {
            return true;
        }
        problems.add(
                Rule.VOLUME_EQUATION_MISSING,
                "species",
                tree.species(),
                "species " + tree.species() + " has no volume equation");
        return false;
    }

    /** The tree, without a height that does not go with the others; null if its row is out for that. */
    private @Nullable Tree checked(Tree tree, FillingCurves curve, RowFindings problems) {
        FieldHeight height = tree.height();
        if (height == null || tree.detail().top() != Top.WHOLE) {
            return tree;
        }
        Optional<Finding> found = HeightFindings.of(
                design, tree, curve.offCurve(tree, design.height().offCurve()));
        if (found.isEmpty()) {
            return tree;
        }
        Policy policy = design.policy(found.get().rule());
        String then = policy == Policy.KEEP ? "; the height is set aside and filled from the curve" : "";
        problems.add(
                found.get().rule(), height.column(), height.text(), found.get().detail() + then);
        return policy == Policy.KEEP ? tree.withoutHeight() : null;
    }

    @Override
    public void add(int number) {
        plot.add(shares, number);
        if (!remarked.isEmpty()) {
            remarked.getOrDefault(number, List.of())
                    .forEach(r -> remarks.merge(r, (long) shares.trees(number), Long::sum));
        }
    }

    @Override
    public void end() {
        if (sumsUnderway == null || standUnderway != stand) {
            sumsUnderway = sums.computeIfAbsent(stand, s -> StandSums.none(room.length));
            standUnderway = stand;
        }
        sumsUnderway.add(plot, shares, room);
    }
}
