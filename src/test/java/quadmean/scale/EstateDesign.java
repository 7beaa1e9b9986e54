package quadmean.scale;

import java.util.Locale;
import quadmean.scale.InventedWoods.Curve;
import quadmean.scale.InventedWoods.Species;

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

    /** The design file. */
    static String text(EstateSize size, EstateFiles files) {
        StringBuilder text = new StringBuilder(
                String.format(Locale.ROOT, HEAD, size.stands(), size.seed(), size.seed(), files.tallyName()));
        for (Species s : InventedWoods.SPECIES) {
            text.append(String.format(Locale.ROOT, SPECIES, s.code(), s.name(), s.a(), s.b(), s.c()));
        }
        return text.toString();
    }

    /** The curves that the heights are drawn about, by region and species: h = 1.3 + d²/(b0 + b1·d)², metres and centimetres. */
    static String curves() {
        StringBuilder text = new StringBuilder("region,species,form,b0,b1\n");
        for (int region = 0; region < InventedWoods.REGIONS.size(); region++) {
            for (Species s : InventedWoods.SPECIES) {
                Curve curve = s.curve(region);
                text.append(String.format(
                        Locale.ROOT,
                        "%s,%s,naslund,%.4f,%.4f\n",
                        InventedWoods.REGIONS.get(region),
                        s.code(),
                        curve.b0(),
                        curve.b1()));
            }
        }
        return text.toString();
    }
}
