package quadmean.demo;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import quadmean.layout.Tract;
import quadmean.layout.TractPart;
import quadmean.measure.FixedPlot;
import quadmean.units.Unit;

/**
 * Every tree of the demonstration tract, placed and measured by an invented rule, and the tally of a crew that runs the plots of
 * a list by walkthrough. As all trees are known, so is what a cruise should find.
 */
public final class LaidOutStand {
    /** The seed of the shipped tally. */
    public static final long SEED = 20_260_511;

    private static final double RADIUS =
            FixedPlot.ofArea(Unit.ACRE.convert(0.1, Unit.HECTARE)).radius();
    private static final int HEIGHT_EVERY = 5;
    private static final GeometryFactory SHAPES = new GeometryFactory();

    /** A stratum: trees per acre, mean dbh (in), shares of the species. */
    private record Cover(double perAcre, double dbh, double[] shares) {}

    private static final String[] SPECIES = {"PSME", "LAOC", "ABGR", "PICO"};
    private static final Map<String, Cover> COVERS = Map.of(
            "N", new Cover(165, 11.5, new double[] {0.55, 0.15, 0.30, 0.00}),
            "B", new Cover(235, 8.5, new double[] {0.15, 0.20, 0.05, 0.60}),
            "C", new Cover(115, 14.5, new double[] {0.35, 0.05, 0.60, 0.00}));

    /**
     * A tree.
     *
     * @param at where it stands, on the grid of the tract (m)
     * @param dbh in, as read to a tenth
     * @param heightFt height (ft)
     */
    public record Stem(String stratum, Coordinate at, int species, double dbh, double heightFt) {}

    private final Random random;
    private final Tract tract;
    private final List<Stem> stems = new ArrayList<>();

    private LaidOutStand(Tract tract, long seed) {
        this.tract = tract;
        this.random = new Random(seed);
        tract.parts().forEach(this::grow);
    }

    /** The stand of a seed. */
    public static LaidOutStand of(Tract tract, long seed) {
        return new LaidOutStand(tract, seed);
    }

    /** Every tree. */
    public List<Stem> stems() {
        return List.copyOf(stems);
    }

    private void grow(TractPart part) {
        Cover cover = COVERS.get(part.stratum());
        PreparedGeometry inside = PreparedGeometryFactory.prepare(part.shape());
        Envelope box = part.shape().getEnvelopeInternal();
        double acres = Unit.HECTARE.convert(tract.grid().areaHa(part.shape()), Unit.ACRE);
        int left = (int) Math.round(acres * cover.perAcre());
        while (left > 0) {
            Coordinate at = new Coordinate(
                    box.getMinX() + random.nextDouble() * box.getWidth(),
                    box.getMinY() + random.nextDouble() * box.getHeight());
            double dense = 0.65 + 0.35 * Math.sin(at.x / 47) * Math.cos(at.y / 61);
            if (random.nextDouble() < dense && inside.contains(SHAPES.createPoint(at))) {
                stems.add(stem(part.stratum(), at, cover));
                left--;
            }
        }
    }

    private Stem stem(String stratum, Coordinate at, Cover cover) {
        int species = pick(cover.shares());
        double dbh = Math.max(4.1, cover.dbh() * Math.exp(0.38 * random.nextGaussian() - 0.05));
        double[] a = {4.95, 4.90, 4.92, 4.65};
        double[] b = {-8.2, -7.0, -8.0, -5.6};
        double height = 4.5 + Math.exp(a[species] + b[species] / (dbh + 1)) * Math.exp(0.09 * random.nextGaussian());
        return new Stem(stratum, at, species, Math.rint(10 * dbh) / 10, height);
    }

    private int pick(double[] shares) {
        double u = random.nextDouble();
        int i = 0;
        while (i < shares.length - 1 && u >= shares[i]) {
            u -= shares[i];
            i++;
        }
        return i;
    }

    /** Writes the tally of the plots that the first argument lists to the file of the second. */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[1]), of(DemoTract.read(), SEED).tally(Path.of(args[0])));
    }

    /** The tally of the plots of a list as CSV, line ends as on Unix. */
    public String tally(Path plots) throws IOException {
        StringBuilder out = new StringBuilder("plot,tree,species,dbh_in,top_pct,base_pct,dist_ft,edge\n");
        Random crew = new Random(SEED + 1);
        int trees = 0;
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(plots)) {
            for (NamedCsvRecord plot : reader) {
                Coordinate centre = new Coordinate(
                        Double.parseDouble(plot.getField("east_m")), Double.parseDouble(plot.getField("north_m")));
                List<Stem> on = on(centre, plot.getField("stratum"));
                if (on.isEmpty()) {
                    out.append(plot.getField("plot")).append(",,,,,,,\n");
                }
                for (int i = 0; i < on.size(); i++) {
                    String readings =
                            trees++ % HEIGHT_EVERY == 0 ? readings(on.get(i).heightFt(), crew) : ",,";
                    int times = times(centre, on.get(i));
                    out.append(String.format(
                            Locale.ROOT,
                            "%s,%d,%s,%.1f,%s,%s\n",
                            plot.getField("plot"),
                            i + 1,
                            SPECIES[on.get(i).species()],
                            on.get(i).dbh(),
                            readings,
                            times == 1 ? "" : Integer.toString(times)));
                }
            }
        }
        return out.toString();
    }

    /** Trees of its stratum within the radius, by bearing from the centre as a crew takes them. */
    private List<Stem> on(Coordinate centre, String stratum) {
        double radius = RADIUS * tract.grid().scaleAt(centre);
        return stems.stream()
                .filter(s -> s.stratum().equals(stratum) && s.at().distance(centre) <= radius)
                .sorted(java.util.Comparator.comparingDouble(s ->
                        Math.floorMod((long) (1e6 * Math.atan2(s.at().x - centre.x, s.at().y - centre.y)), 6_283_185L)))
                .toList();
    }

    /** Twice where a walk through the tree and as far again ends outside the stratum. */
    private int times(Coordinate centre, Stem stem) {
        Geometry ground = tract.parts().stream()
                .filter(p -> p.stratum().equals(stem.stratum()))
                .map(TractPart::shape)
                .findFirst()
                .orElseThrow();
        Coordinate end = new Coordinate(2 * stem.at().x - centre.x, 2 * stem.at().y - centre.y);
        return ground.contains(SHAPES.createPoint(end)) ? 1 : 2;
    }

    /** Percent-scale readings from a taped distance of about the height of the tree. */
    private static String readings(double height, Random crew) {
        long distance = Math.max(30, 10 * Math.round(height / 10));
        double base = -100 * (5.2 + 3 * crew.nextGaussian()) / distance;
        double top = 100 * height / distance + base;
        return String.format(Locale.ROOT, "%d,%d,%d", Math.round(top), Math.round(base), distance);
    }
}
