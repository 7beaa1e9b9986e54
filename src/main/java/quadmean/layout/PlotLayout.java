package quadmean.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import quadmean.design.LayoutSettings;
import quadmean.design.LayoutSettings.Extent;

/** Lays plots out on the ground of a tract. Every place has the same chance unless a buffer is kept. */
public final class PlotLayout {
    /** Stream of random numbers of a layout over the whole tract; no stratum has such a code. */
    private static final String WHOLE = "";

    private final LayoutSettings settings;
    private final Tract tract;
    private final double reachM;
    private final double scale;
    private final double lines;
    private final List<LaidPlot> plots = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<Layout.Ground> done = new ArrayList<>();
    private final List<Layout.LeftOut> leftOut = new ArrayList<>();
    private double along = Double.NaN;
    private double across = Double.NaN;
    private double rowSpacing = Double.POSITIVE_INFINITY;
    private double nearest = Double.POSITIVE_INFINITY;
    private int clusters;
    private int subset;

    private PlotLayout(LayoutSettings settings, Tract tract, double reachM) {
        this.settings = settings;
        this.tract = tract;
        this.reachM = reachM;
        Coordinate middle = tract.outline().getEnvelopeInternal().centre();
        this.scale = tract.grid().scaleAt(middle);
        this.lines = settings.bearingDegrees() + tract.grid().convergenceDegrees(middle);
    }

    /**
     * Lays plots out.
     *
     * @param asked plots (or clusters) asked for by code of stratum
     * @param reachM how near to a line the boundary treatment concerns a plot (m)
     * @param seed seed; each stratum draws from a stream of its own, whatever its place in the file, and so does each subset
     */
    public static Layout lay(
            LayoutSettings settings, Tract tract, Map<String, Integer> asked, double reachM, long seed) {
        PlotLayout work = new PlotLayout(settings, tract, reachM);
        int subsets = settings.subsets();
        Map<String, Integer> each = new LinkedHashMap<>();
        asked.forEach((code, n) -> each.put(code, (n + subsets - 1) / subsets));
        for (int k = 1; k <= subsets; k++) {
            work.subset = subsets > 1 ? k : 0;
            String stream = subsets > 1 ? "\n" + k : "";
            for (Ground ground : work.grounds(each)) {
                long own = seed ^ hash(ground.name + stream);
                work.lay(ground, new SplittableRandom(new SplittableRandom(own).nextLong()));
            }
        }
        int total = subsets * each.values().stream().mapToInt(Integer::intValue).sum();
        return new Layout(
                settings.spacingM().isPresent() ? 0 : total,
                work.plots,
                together(work.done),
                work.leftOut,
                Math.min(
                        work.nearest,
                        settings.cluster().map(LayoutSettings.Cluster::spacingM).orElse(Double.POSITIVE_INFINITY)),
                work.rowSpacing,
                work.lines,
                work.notes.stream().distinct().toList());
    }

    /** The ground of all subsets as one. */
    private static List<Layout.Ground> together(List<Layout.Ground> grounds) {
        Map<String, Layout.Ground> byStratum = new LinkedHashMap<>();
        grounds.forEach(g -> byStratum.merge(g.stratum(), g, Layout.Ground::with));
        return List.copyOf(byStratum.values());
    }

    /** The ground of one layout, less its buffer. */
    private record Ground(String name, Geometry shape, int asked, double bufferPercent) {}

    private List<Ground> grounds(Map<String, Integer> asked) {
        Map<String, Geometry> shapes = new LinkedHashMap<>();
        tract.parts().stream()
                .sorted(Comparator.comparing(TractPart::stratum))
                .forEach(p -> shapes.merge(p.stratum(), p.shape(), Geometry::union));
        if (settings.extent() == Extent.TRACT && shapes.size() > 1) {
            Geometry all = shapes.values().stream().reduce(Geometry::union).orElseThrow();
            int n = asked.values().stream().mapToInt(Integer::intValue).sum();
            return List.of(kept(WHOLE, all, n));
        }
        return shapes.entrySet().stream()
                .map(e -> kept(e.getKey(), e.getValue(), asked.getOrDefault(e.getKey(), 0)))
                .toList();
    }

    /** The ground without the buffer along the line of the tract. */
    private Ground kept(String name, Geometry shape, int asked) {
        if (settings.bufferM() == 0) {
            return new Ground(name, shape, asked, 0);
        }
        Geometry kept = shape.intersection(tract.outline().buffer(-settings.bufferM() * scale));
        double percent = 100 * (1 - kept.getArea() / shape.getArea());
        notes.add(String.format(
                Locale.ROOT,
                "The buffer keeps plots off %.1f %% of %s: what stands there is in no estimate, and where"
                        + " edges differ from the inside the estimate for the whole tract is biased.",
                percent,
                place(name)));
        return new Ground(name, kept, asked, percent);
    }

    private static String place(String name) {
        return name.equals(WHOLE) ? "the tract" : "stratum " + name;
    }

    private void lay(Ground ground, SplittableRandom random) {
        int before = plots.size();
        along = Double.NaN;
        across = Double.NaN;
        if (ground.shape.getArea() == 0
                || (ground.asked == 0 && settings.spacingM().isEmpty())) {
            notes.add("No plot in " + place(ground.name) + ": "
                    + (ground.shape.getArea() == 0
                            ? "nothing of it is left inside the buffer."
                            : "none is asked for; its trees are then in no estimate."));
        } else if (settings.cluster().isPresent()) {
            clusters(ground, random);
        } else {
            singles(ground, random);
        }
        done.add(new Layout.Ground(
                ground.name.equals(WHOLE) ? Layout.WHOLE : ground.name,
                settings.spacingM().isPresent() ? 0 : ground.asked,
                plots.size() - before,
                along / scale,
                across / scale,
                ground.bufferPercent));
    }

    private void singles(Ground ground, SplittableRandom random) {
        PreparedGeometry inside = PreparedGeometryFactory.prepare(ground.shape);
        spots(ground.shape, ground.shape.getArea(), ground.asked, random).stream()
                .filter(s -> covers(inside, s.at()))
                .forEach(s -> add(ground, s, OptionalInt.empty()));
    }

    /**
     * Clusters. Middles are also laid beyond the line as far as a cluster reaches: were they kept inside, places near the
     * line would have a smaller chance.
     */
    private void clusters(Ground ground, SplittableRandom random) {
        LayoutSettings.Cluster cluster = settings.cluster().orElseThrow();
        List<Coordinate> offsets = ClusterOffsets.of(cluster, lines, scale);
        double reach =
                offsets.stream().mapToDouble(o -> Math.hypot(o.x, o.y)).max().orElse(0);
        Geometry wide = ground.shape.buffer(1.01 * reach, 32);
        double share = wide.getArea() / ground.shape.getArea();
        int middles = settings.pattern().isGrid() ? ground.asked : (int) Math.max(1, Math.round(ground.asked * share));
        PreparedGeometry inside = PreparedGeometryFactory.prepare(ground.shape);
        PreparedGeometry around = PreparedGeometryFactory.prepare(wide);
        for (Spot s : spots(wide, ground.shape.getArea(), middles, random)) {
            if (!covers(around, s.at())) {
                continue;
            }
            cluster(ground, inside, s.at(), offsets);
        }
    }

    /** Adds the plots of a cluster that lie inside; a cluster without any is none. */
    private void cluster(Ground ground, PreparedGeometry inside, Coordinate middle, List<Coordinate> offsets) {
        List<Layout.LeftOut> beyond = new ArrayList<>();
        int before = plots.size();
        for (int i = 0; i < offsets.size(); i++) {
            Coordinate at = new Coordinate(middle.x + offsets.get(i).x, middle.y + offsets.get(i).y);
            if (covers(inside, at)) {
                add(ground, Spot.free(at), OptionalInt.of(clusters + 1));
            } else {
                beyond.add(new Layout.LeftOut(clusters + 1, i + 1));
            }
        }
        if (plots.size() > before) {
            clusters++;
            leftOut.addAll(beyond);
        }
    }

    private List<Spot> spots(Geometry shape, double area, int n, SplittableRandom random) {
        return switch (settings.pattern()) {
            case RANDOM -> {
                rowSpacing = Math.min(rowSpacing, Math.sqrt(area / n));
                yield RandomPattern.independent(shape, n, random);
            }
            case BALANCED -> {
                rowSpacing = Math.min(rowSpacing, Math.sqrt(area / n));
                yield RandomPattern.balanced(shape, n, random);
            }
            default -> {
                GridPattern grid = GridSize.of(settings, area, n, lines, scale);
                rowSpacing = Math.min(rowSpacing, grid.acrossM());
                along = grid.alongM();
                across = grid.acrossM();
                if (settings.cluster().isEmpty()) {
                    nearest = Math.min(nearest, grid.nearest() / scale);
                }
                yield grid.over(shape, random);
            }
        };
    }

    private void add(Ground ground, Spot spot, OptionalInt cluster) {
        var point = ground.shape.getFactory().createPoint(spot.at());
        TractPart part = tract.parts().stream()
                .filter(p -> ground.name.equals(WHOLE) || p.stratum().equals(ground.name))
                .min(Comparator.comparingDouble((TractPart p) -> p.shape().distance(point))
                        .thenComparing(TractPart::stratum))
                .orElseThrow();
        double edge = tract.outline().getBoundary().distance(point) / scale;
        double line = part.shape().getBoundary().distance(point) / scale;
        double counting = ground.name.equals(WHOLE) ? edge : Math.min(edge, line);
        plots.add(new LaidPlot(
                part.stratum(),
                spot.at(),
                spot.row() < 0 || subset > 0 ? OptionalInt.empty() : OptionalInt.of(spot.row()),
                spot.column() < 0 || subset > 0 ? OptionalInt.empty() : OptionalInt.of(spot.column()),
                cluster,
                edge,
                counting,
                counting < reachM ? SheetPlot.Edge.NEAR : SheetPlot.Edge.INSIDE,
                subset));
    }

    private static boolean covers(PreparedGeometry shape, Coordinate at) {
        return shape.covers(shape.getGeometry().getFactory().createPoint(at));
    }

    /** A code as a number (Fowler, Noll and Vo, 64 bits; from memory), the same on every machine. */
    private static long hash(String code) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < code.length(); i++) {
            hash = (hash ^ code.charAt(i)) * 0x100000001b3L;
        }
        return hash;
    }
}
