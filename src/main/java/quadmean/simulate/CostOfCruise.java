package quadmean.simulate;

import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;
import quadmean.design.Design;
import quadmean.design.LayoutSettings;
import quadmean.design.SimulationSettings.Minutes;
import quadmean.layout.LaidPlot;
import quadmean.layout.Route;
import quadmean.model.PlotDesign;

/** What one cruise takes, as the mean over a few of them; the walk is that of {@link Route}, over every plot that is visited. */
final class CostOfCruise {
    private static final int CRUISES = 20;
    /** Walks over more plots than this are not worked out: the way through them would take longer than the cruises. */
    private static final int MOST_PLOTS = 400;

    private static final double MINUTES = 60;

    private CostOfCruise() {}

    static Cost of(PaperDesign paper, Forest forest, PaperCrew crew, long seed) {
        double[] sums = new double[5];
        for (int i = 0; i < CRUISES; i++) {
            PaperTally tally = crew.cruise(new SplittableRandom(seed + i));
            double[] one = {
                tally.visited(), tally.measured(), tally.counted(), tally.heights(), walkM(paper, forest, tally)
            };
            for (int k = 0; k < one.length; k++) {
                sums[k] += one[k] / CRUISES;
            }
        }
        return new Cost(sums[0], sums[1], sums[2], sums[3], sums[4], hours(paper, sums));
    }

    private static double walkM(PaperDesign paper, Forest forest, PaperTally tally) {
        if (paper.design().plot() instanceof PlotDesign.Complete
                || tally.places().size() > MOST_PLOTS) {
            return Double.NaN;
        }
        List<Coordinate> places = tally.places().stream().map(LaidPlot::at).toList();
        Coordinate start = new Coordinate(forest.box().getMinX(), forest.box().getMinY());
        double strip = Math.sqrt(forest.box().getArea() / Math.max(1, places.size()));
        return Route.of(places, start, paper.layout().walking(), strip, 0).lengthM();
    }

    /** Whether there is a walk that the hours leave out. */
    static boolean isWithoutWalk(Design design, Cost cost) {
        return Double.isNaN(cost.walkM()) && !(design.plot() instanceof PlotDesign.Complete);
    }

    private static double hours(PaperDesign paper, double[] sums) {
        LayoutSettings.Walking walking = paper.layout().walking();
        Minutes minutes = paper.design().simulation().minutes();
        double trees = sums[1] * minutes.perTree() + sums[3] * minutes.perHeight() + sums[2] * minutes.perCount();
        double walk = Double.isNaN(sums[4]) ? 0 : sums[4] / walking.metresPerHour();
        boolean isComplete = paper.design().plot() instanceof PlotDesign.Complete;
        return walk + (isComplete ? 0 : sums[0] * walking.plotHours()) + trees / MINUTES;
    }
}
