package quadmean.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import quadmean.cruise.Cruise;
import quadmean.cruise.CruiseResult;
import quadmean.cruise.CruiseRun;
import quadmean.design.DesignReader;
import quadmean.design.DesignReading;

/**
 * Three trees on two plots of 0.1 acre, whose stems are cones without bark: d = dbh·(H - h)/(H - 4.5 ft). Each tapers by
 * 0.2 in a foot, so that what is in its logs can be worked out by hand. All of it is invented.
 *
 * @param design the design
 * @param tally the tally
 */
public record SmallWoodlot(String design, String tally) {
    private static final String DESIGN = """
            schema = 1
            [cruise]
            name = "Woodlot"
            units = "us"
            area = 40
            [plot]
            kind = "fixed"
            area = 0.1
            [[tally]]
            file = "tally.csv"
            [tally.columns]
            plot = "plot"
            tree = "tree"
            species = "species"
            dbh = { name = "dbh", unit = "in" }
            height = { name = "height", unit = "ft" }
            merchantable_height = { name = "merch", unit = "ft" }
            logs = "logs"
            count = "count"
            status = "status"
            broken = "broken"
            grade = "grade"
            defect = "defect"
            [species.PSME]
            [species.ABGR]
            [volume."*"]
            form = "combined_variable"
            a = 0
            b = 0.002
            dbh_unit = "in"
            height_unit = "ft"
            volume_unit = "ft3"
            source = "made up"
            standing = "invented"
            [taper."*"]
            form = "ormerod"
            p = 1
            source = "made up"
            standing = "invented"
            [logs]
            rule = "doyle"
            stump = 0.5
            trim = 0.5
            [[product]]
            code = "SAW"
            name = "sawlogs"
            lengths = [16]
            min_small_end = 8
            defect = 5
            [[product]]
            code = "PULP"
            lengths = [8]
            min_small_end = 4
            measure = "cubic"
            [prices]
            currency = "EUR"
            source = "made up"
            standing = "invented"
            [[price]]
            product = "SAW"
            amount = 500
            per = "mbf"
            [[price]]
            product = "PULP"
            amount = 10
            per = "ton"
            [green_weight."*"]
            factor = 50
            unit = "lb/ft3"
            source = "made up"
            standing = "invented"
            [biomass."*"]
            form = "power_sum"
            powers = [[0.1, 2]]
            component = "aboveground"
            source = "made up"
            standing = "invented"
            """;

    private static final String TALLY = """
            plot,tree,species,dbh,height,merch,logs,count,status,broken,grade,defect
            1,1,PSME,20,104.5,,,,,,,10
            1,2,ABGR,10,54.5,,,,,,,
            2,1,PSME,16,84.5,,,,,,,
            """;

    public SmallWoodlot() {
        this(DESIGN, TALLY);
    }

    /** With one text of the design replaced, which must be there. */
    public SmallWoodlot with(String old, String now) {
        assertTrue(design.contains(old), "the design has no " + old);
        return new SmallWoodlot(design.replace(old, now), tally);
    }

    /** With one text of the tally replaced, which must be there. */
    public SmallWoodlot where(String old, String now) {
        assertTrue(tally.contains(old), "the tally has no " + old);
        return new SmallWoodlot(design, tally.replace(old, now));
    }

    /** With more lines of design. */
    public SmallWoodlot plus(String lines) {
        return new SmallWoodlot(design + lines + "\n", tally);
    }

    public Path write(Path folder) {
        try {
            Files.writeString(folder.resolve("tally.csv"), tally);
            return Files.writeString(folder.resolve("woodlot.toml"), design);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What comes of the cruise, which must be in order. */
    public CruiseResult run(Path folder) {
        try {
            DesignReading reading = DesignReader.read(write(folder));
            assertEquals(java.util.List.of(), reading.problems());
            CruiseRun run = Cruise.run(Objects.requireNonNull(reading.design()));
            return Objects.requireNonNull(
                    run.result(), () -> run.tally().problems().toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
