package quadmean.volume;

import java.util.ArrayList;
import java.util.List;
import quadmean.volume.StemSections.Side;

/** What is wrong with the measurements of a stem, all at once. */
final class StemProblems {
    private final List<String> found = new ArrayList<>();

    private StemProblems() {}

    static void check(List<StemPoint> points, double totalHeightM, Side side) {
        StemProblems problems = new StemProblems();
        problems.sizes(points, side);
        problems.order(points, totalHeightM);
        if (!problems.found.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", problems.found));
        }
    }

    private void sizes(List<StemPoint> points, Side side) {
        for (int i = 0; i < points.size(); i++) {
            StemPoint p = points.get(i);
            String name = "point " + (i + 1) + ": ";
            addUnless(finite(p.heightM()) && p.heightM() >= 0, name + "height must be zero or more, got ", p.heightM());
            addUnless(
                    finite(p.diameterCm()) && p.diameterCm() > 0,
                    name + "diameter must be above zero, got ",
                    p.diameterCm());
            if (!Double.isNaN(p.barkCm())) {
                addUnless(
                        side == Side.OUTSIDE_BARK,
                        name + "a diameter inside bark has no bark to take off, got bark of ",
                        p.barkCm());
                addUnless(
                        p.barkCm() >= 0 && 2 * p.barkCm() < p.diameterCm(),
                        name + "bark must lie between zero and half the diameter of " + p.diameterCm() + ", got ",
                        p.barkCm());
            }
        }
    }

    private void order(List<StemPoint> points, double totalHeightM) {
        boolean topKnown = !Double.isNaN(totalHeightM);
        addUnless(
                points.size() >= (topKnown ? 1 : 2),
                "a stem needs two points, or one and its total height; points: ",
                points.size());
        for (int i = 1; i < points.size(); i++) {
            double below = points.get(i - 1).heightM();
            addUnless(
                    !(points.get(i).heightM() <= below),
                    "point " + (i + 1) + ": height must exceed that of the point below, " + below + ", got ",
                    points.get(i).heightM());
        }
        if (topKnown && !points.isEmpty()) {
            double last = points.get(points.size() - 1).heightM();
            addUnless(
                    finite(totalHeightM) && totalHeightM > last,
                    "total height must exceed that of the highest point, " + last + ", got ",
                    totalHeightM);
        }
    }

    private void addUnless(boolean right, String rule, double value) {
        if (!right) {
            found.add(rule + value);
        }
    }

    private static boolean finite(double value) {
        return Math.abs(value) < Double.POSITIVE_INFINITY;
    }
}
