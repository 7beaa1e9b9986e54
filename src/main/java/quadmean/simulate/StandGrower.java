package quadmean.simulate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import quadmean.design.Design;
import quadmean.layout.Tract;
import quadmean.layout.TractPart;
import quadmean.model.MappedTree;
import quadmean.model.StandClass;

/** Makes trees from a stand table: as many as the area holds, at places by the pattern, sizes anywhere in their class. */
final class StandGrower {
    /** More trees than this are more than a trial needs. */
    private static final double MOST_TREES = 2_000_000;

    private final Tract tract;
    private final ForestRules rules;
    private final SplittableRandom random;

    StandGrower(Design design, Tract tract, ForestRules rules) {
        this.tract = tract;
        this.rules = rules;
        this.random = new SplittableRandom(rules.seed());
    }

    List<MappedTree> trees(List<StandClass> classes) {
        List<MappedTree> trees = new ArrayList<>();
        for (TractPart part : tract.parts()) {
            List<StandClass> own = classes.stream()
                    .filter(c -> c.stratum().isEmpty() || c.stratum().equals(part.stratum()))
                    .sorted(Comparator.comparing(StandClass::species).thenComparingDouble(StandClass::dbhCm))
                    .toList();
            grow(new Ground(part.shape()), own, trees);
        }
        return trees;
    }

    private void grow(Ground ground, List<StandClass> classes, List<MappedTree> trees) {
        double[] sums = new double[classes.size()];
        double perHa = 0;
        for (int k = 0; k < sums.length; k++) {
            perHa += classes.get(k).treesPerHa();
            sums[k] = perHa;
        }
        double wanted = perHa * ground.areaHa();
        if (wanted > MOST_TREES) {
            throw new IllegalArgumentException("the stand table makes " + Math.round(wanted)
                    + " trees on this area, and 2,000,000 are the most; try the design on a part of it");
        }
        int n = (int) Math.round(wanted);
        for (double[] place : new Places(ground, rules, random).draw(n)) {
            int k = pick(sums, perHa * random.nextDouble());
            double dbh = size(classes, k);
            trees.add(new MappedTree(
                    trees.size() + 1L, place[0], place[1], classes.get(k).species(), dbh, Double.NaN));
        }
    }

    private static int pick(double[] sums, double at) {
        int k = 0;
        while (k < sums.length - 1 && sums[k] <= at) {
            k++;
        }
        return k;
    }

    /** Anywhere between the middles to the classes on either side, of the same species; a single class is a single size. */
    private double size(List<StandClass> classes, int k) {
        StandClass own = classes.get(k);
        double below = k > 0 && classes.get(k - 1).species().equals(own.species())
                ? classes.get(k - 1).dbhCm()
                : Double.NaN;
        double above = k < classes.size() - 1 && classes.get(k + 1).species().equals(own.species())
                ? classes.get(k + 1).dbhCm()
                : Double.NaN;
        double d = own.dbhCm();
        double low = Double.isNaN(below)
                ? Math.max(d / 2, d - (Double.isNaN(above) ? 0 : (above - d) / 2))
                : (below + d) / 2;
        double high = Double.isNaN(above) ? d + (Double.isNaN(below) ? 0 : (d - below) / 2) : (d + above) / 2;
        return Double.isNaN(below) && Double.isNaN(above) ? d : low + (high - low) * random.nextDouble();
    }
}
