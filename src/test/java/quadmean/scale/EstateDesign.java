package quadmean.scale;

import java.util.Locale;
import quadmean.model.CurveForm;
import quadmean.model.FillingCurve;
import quadmean.model.HeightSource;
import quadmean.scale.InventedWoods.Curve;
import quadmean.scale.InventedWoods.Species;
import quadmean.units.UnitSystem;

/** The design and the curves that go with an invented estate, as text. */
final class EstateDesign {
    private static final String HEAD = """
            # An invented estate of %d stands, drawn from seed %d: no stand, tree, height or equation in it is real.
            schema = 1

            [cruise]
            name = "Invented estate"
            units = "metric"
            confidence = 0.95
            target_error = 10               # percent
            seed = %d

            [plot]
            kind = "fixed"
            area = 0.04                     # ha: 400 m2

            [estate]
            stands = "stands.csv"
            %s
            [estate.columns]
            stand = "stand"
            area = { name = "area_ha", unit = "ha" }
            region = "region"
            stratum = "stratum"

            [[tally]]
            file = "%s"

            [tally.columns]
            stand = "stand"
            plot = "plot"
            tree = "tree"
            species = "species"
            dbh = { name = "dbh_cm", unit = "cm" }
            height = { name = "height_m", unit = "m" }
            """;

    private static final String SPECIES = """

            [species.%s]
            name = "%s"

            [volume.%1$s]
            form = "schumacher_hall"
            a = %s
            b = %s
            c = %s
            log_base = "e"
            dbh_unit = "cm"
            height_unit = "m"
            volume_unit = "m3"
            source = "made up for this estate"
            standing = "invented"
            """;

    private EstateDesign() {}

    /** Where the height curves of a design come from. */
    enum Curves {
        FITTED(""),
        GIVEN("curves = \"curves.csv\"\n");

        private final String line;

        Curves(String line) {
            this.line = line;
        }
    }

    /** The design file. */
    static String text(EstateSize size, EstateFiles files, Curves curves) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT, HEAD, size.stands(), size.seed(), size.seed(), curves.line, files.tallyName()));
        for (Species s : InventedWoods.SPECIES) {
            text.append(String.format(Locale.ROOT, SPECIES, s.code(), s.name(), s.a(), s.b(), s.c()));
        }
        return text.toString();
    }

    /**
     * The curves that the heights are drawn about, by region and species, as the program writes its own: no heights are behind
     * them, and a scatter that is not known sets no height aside.
     */
    static String curves() {
        StringBuilder text = new StringBuilder(String.join(",", FillingCurve.COLUMNS)).append('\n');
        for (int region = 0; region < InventedWoods.REGIONS.size(); region++) {
            for (Species s : InventedWoods.SPECIES) {
                Curve curve = s.curve(region);
                text.append(String.format(
                        Locale.ROOT,
                        "%s,%s,%s,%s,%s,%s,1.0,%.4f,%.4f,,0,,,\n",
                        InventedWoods.REGIONS.get(region),
                        s.code(),
                        HeightSource.SPECIES_CURVE.id(),
                        CurveForm.NASLUND.id(),
                        UnitSystem.METRIC.id(),
                        Curve.BREAST_HEIGHT,
                        curve.b0(),
                        curve.b1()));
            }
        }
        return text.toString();
    }
}
