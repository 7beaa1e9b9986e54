package quadmean.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Envelope;

/** Places of generated trees on a piece of ground. */
final class Places {
    /** Share of the mean spacing that trees of a regular stand keep from one another; about 0.83 is the densest that chance packs. */
    private static final double APART = 0.65;

    private static final int MOST_TRIES = 10_000;
    /** Clumps are also placed beyond the line, so many standard deviations. */
    private static final double BEYOND = 4;

    private final Ground ground;
    private final ForestRules rules;
    private final SplittableRandom random;

    Places(Ground ground, ForestRules rules, SplittableRandom random) {
        this.ground = ground;
        this.rules = rules;
        this.random = random;
    }

    /** So many places, each x and y (m). */
    List<double[]> draw(int n) {
        return switch (rules.pattern()) {
            case RANDOM -> uniform(n);
            case CLUSTERED -> clumps(n);
            case REGULAR -> apart(n);
        };
    }

    private double[] anywhere(Envelope box) {
        return new double[] {
            box.getMinX() + box.getWidth() * random.nextDouble(), box.getMinY() + box.getHeight() * random.nextDouble()
        };
    }

    private double[] inside() {
        while (true) {
            double[] at = anywhere(ground.box());
            if (ground.holds(at[0], at[1])) {
                return at;
            }
        }
    }

    private List<double[]> uniform(int n) {
        List<double[]> places = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            places.add(inside());
        }
        return places;
    }

    /** Middles are drawn once, as many as the trees make clumps; each tree then belongs to one of them, drawn evenly (Thomas process). */
    private List<double[]> clumps(int n) {
        Envelope wide = new Envelope(ground.box());
        wide.expandBy(BEYOND * rules.clumpM());
        double share = wide.getArea() / (10_000 * ground.areaHa());
        int clumps = (int) Math.max(1, Math.round(n * share / rules.treesPerClump()));
        List<double[]> middles = new ArrayList<>();
        for (int i = 0; i < clumps; i++) {
            middles.add(anywhere(wide));
        }
        List<double[]> places = new ArrayList<>(n);
        while (places.size() < n) {
            double[] middle = middles.get(random.nextInt(clumps));
            double x = middle[0] + rules.clumpM() * random.nextGaussian();
            double y = middle[1] + rules.clumpM() * random.nextGaussian();
            if (ground.holds(x, y)) {
                places.add(new double[] {x, y});
            }
        }
        return places;
    }

    /** One after the other wherever no tree stands too near (simple sequential inhibition). */
    private List<double[]> apart(int n) {
        double distance = APART * Math.sqrt(10_000 * ground.areaHa() / Math.max(1, n));
        Neighbours neighbours = new Neighbours(ground.box(), distance);
        List<double[]> places = new ArrayList<>(n);
        while (places.size() < n) {
            double[] at = inside();
            for (int tries = 0; neighbours.isNear(at) && tries < MOST_TRIES; tries++) {
                at = inside();
            }
            neighbours.add(at);
            places.add(at);
        }
        return places;
    }
}
