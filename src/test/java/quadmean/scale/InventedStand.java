package quadmean.scale;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import quadmean.scale.InventedWoods.Curve;

/**
 * A stand of an invented estate, which draws its own plots and trees: from its own random numbers, so that it comes out the same
 * in whatever file it lands.
 */
final class InventedStand {
    /** One plot in so many is empty. */
    private static final int EMPTY_OF = 100;
    /** One tree in so many has a height. */
    private static final int HEIGHT_OF = 10;
    /** One stand in so many has a single plot. */
    private static final int SINGLE_OF = 200;

    private static final double THINNEST = 5;
    private static final double THICKEST = 120;
    private static final double HEIGHT_SPREAD = 0.08;
    private static final int LOWEST_TENTHS = 14;
    private static final List<byte[]> CODES = InventedWoods.SPECIES.stream()
            .map(s -> RowBuffer.ascii("," + s.code() + ","))
            .toList();

    private final SplittableRandom random;
    private final String name;
    private final int region;
    private final int stratum;
    private final int areaTenths;
    private final int plots;
    private final double meanTrees;
    private final double dbhScale;
    private final double dbhRange;
    private final List<Curve> curves;

    /**
     * Draws a stand.
     *
     * @param number number of the stand, from 1
     * @param random random numbers that no other stand uses
     */
    InventedStand(int number, EstateSize size, SplittableRandom random) {
        this.random = random;
        name = String.format(Locale.ROOT, "S%06d", number);
        region = random.nextInt(InventedWoods.REGIONS.size());
        stratum = random.nextInt(InventedWoods.STRATA.size());
        areaTenths = (int) (10 * Math.max(1, 18 * StrictMath.exp(0.6 * normal())));
        plots = random.nextInt(SINGLE_OF) == 0 ? 1 : 2 + random.nextInt(2 * size.plotsPerStand() - 3);
        double level = StrictMath.exp(0.35 * normal() - 0.35 * 0.35 / 2);
        meanTrees = level * size.treesPerPlot() * EMPTY_OF / (EMPTY_OF - 1.0);
        dbhScale = 16 + 20 * random.nextDouble();
        dbhRange = 1 - StrictMath.exp(-StrictMath.pow((THICKEST - THINNEST) / dbhScale, 2));
        curves = InventedWoods.SPECIES.stream().map(s -> s.curve(region)).toList();
    }

    /** The row of the stand table. */
    String row() {
        return name + "," + areaTenths / 10 + "." + areaTenths % 10 + "," + InventedWoods.REGIONS.get(region) + ","
                + InventedWoods.STRATA.get(stratum) + "\n";
    }

    /** Writes the rows of the tally, plot by plot, and counts them. */
    void tally(RowBuffer buffer, OutputStream out, EstateCount count) throws IOException {
        count.stand();
        for (int plot = 1; plot <= plots; plot++) {
            byte[] start = RowBuffer.ascii(name + "," + plot + ",");
            int trees = random.nextInt(EMPTY_OF) == 0 ? 0 : treesOfPlot();
            count.plot(trees);
            if (trees == 0) {
                buffer.add(start).add(',').add(',').add(',').endRow(out);
            }
            for (int tree = 1; tree <= trees; tree++) {
                buffer.add(start).add(tree);
                tree(buffer, count);
                buffer.endRow(out);
            }
        }
    }

    private int treesOfPlot() {
        return Math.max(1, (int) Math.rint(meanTrees + 1.2 * Math.sqrt(meanTrees) * normal()));
    }

    private void tree(RowBuffer buffer, EstateCount count) {
        int species = InventedWoods.species(region, random.nextInt(100));
        int dbhTenths = (int) Math.rint(10 * dbh());
        buffer.add(CODES.get(species)).addTenths(dbhTenths).add(',');
        if (random.nextInt(HEIGHT_OF) == 0) {
            double part = HEIGHT_SPREAD * Math.max(-3, Math.min(3, normal()));
            double height = curves.get(species).height(dbhTenths / 10.0, part);
            buffer.addTenths(Math.max(LOWEST_TENTHS, (int) Math.rint(10 * height)));
            count.height();
        }
    }

    /** A dbh by a Weibull distribution of shape 2 that starts at the thinnest and is cut off at the thickest dbh. */
    private double dbh() {
        return THINNEST + dbhScale * Math.sqrt(-StrictMath.log(1 - random.nextDouble() * dbhRange));
    }

    /** A standard normal deviate (Box and Muller 1958, from memory): the same on every machine. */
    private double normal() {
        double radius = Math.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
        return radius * StrictMath.cos(2 * Math.PI * random.nextDouble());
    }
}
