package quadmean.simulate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;
import quadmean.field.ForestReader;
import quadmean.model.ForestData;
import quadmean.model.IntervalRule;
import quadmean.model.Progress;

/** Known forests and designs to cruise them by, for the tests and for the table of coverages. */
final class Trials {
    static final Set<IntervalRule> BY_FORMULA = EnumSet.of(IntervalRule.STUDENT_T, IntervalRule.LOG_SCALE);

    private Trials() {}

    /** Forests: three that were mapped, two made up. */
    enum Stand {
        LONGLEAF("longleaf-map", 4, 4, 0.05, new Window(0, 0, 200, 200), ForestRules.Pattern.RANDOM),
        WAKA("forests/waka", 1, 9, 0.02, new Window(0, 0, 100, 100), ForestRules.Pattern.RANDOM),
        SPRUCES("forests/spruces", 0.2128, 12, 0.005, new Window(0, 0, 56, 38), ForestRules.Pattern.RANDOM),
        CLUSTERED("forests/uneven-aged", 6, 4, 0.03, null, ForestRules.Pattern.CLUSTERED),
        REGULAR("forests/uneven-aged", 6, 4, 0.03, null, ForestRules.Pattern.REGULAR);

        private final String file;
        final double areaHa;
        /** A basal area factor that suits it (m²/ha). */
        final double factor;
        /** Area of a plot that suits it (ha). */
        final double plotHa;

        private final ForestRules rules;

        Stand(
                String file,
                double areaHa,
                double factor,
                double plotHa,
                @org.jspecify.annotations.Nullable Window window,
                ForestRules.Pattern pattern) {
            this.file = file;
            this.areaHa = areaHa;
            this.factor = factor;
            this.plotHa = plotHa;
            this.rules = new ForestRules(pattern, 10, 5, 12, 2, Optional.ofNullable(window));
        }

        Forest forest(Design design) throws IOException {
            ForestData data = ForestReader.read(Path.of("datasets", file + ".csv"));
            return Objects.requireNonNull(
                    ForestMaker.make(design, data, Optional.empty(), rules).forest());
        }

        /** Extent of the ground to the east (m). */
        double eastM() {
            return this == SPRUCES ? 56 : Math.sqrt(10_000 * areaHa);
        }

        /** Extent to the north (m). */
        double northM() {
            return this == SPRUCES ? 38 : Math.sqrt(10_000 * areaHa);
        }
    }

    /** A design that aims at basal area, with these tables behind its head; two strata if asked for. */
    static String text(Stand stand, boolean strata, String tables) {
        String area = strata
                ? String.format(
                        Locale.ROOT,
                        "\n[[stratum]]\ncode = \"W\"\narea = %s\n[[stratum]]\ncode = \"E\"\narea = %s\n",
                        0.4 * stand.areaHa,
                        0.6 * stand.areaHa)
                : "area = " + stand.areaHa + "\n";
        return "schema = 1\n[cruise]\nname = \"Trial\"\nunits = \"metric\"\ntarget_attribute = \"basal_area\"\n" + area
                + tables;
    }

    static Design design(Path folder, String text) throws IOException {
        DesignReading reading = DesignReader.read(Files.writeString(folder.resolve("trial.toml"), text));
        return Objects.requireNonNull(reading.design(), () -> reading.problems().toString());
    }

    static SimulationResult run(Path folder, Stand stand, String text, long cruises) throws IOException {
        Design design = design(folder, text);
        return Simulator.of(design, stand.forest(design), 1).run(cruises, 11, BY_FORMULA, Progress.SILENT);
    }
}
