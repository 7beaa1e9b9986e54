package quadmean.support;

import java.io.DataInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quadmean.cruise.Estate;
import quadmean.cruise.EstateKeeping;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.design.DesignReader;
import quadmean.model.Problem;
import quadmean.model.Progress;

/**
 * An estate of four stands, invented: two with plots, one with a single plot, one with none.
 *
 * @param design the design
 * @param stands the table of stands
 * @param tally the tally
 */
public record SmallEstate(String design, String stands, String tally) {
    private static final String DESIGN = """
            schema = 1
            [cruise]
            name = "Small estate"
            units = "metric"
            confidence = 0.9
            target_error = 30
            seed = 5
            [plot]
            kind = "fixed"
            area = 0.05
            [estate]
            stands = "stands.csv"
            [estate.columns]
            stand = "stand"
            area = "area_ha"
            region = "region"
            stratum = "stratum"
            [[tally]]
            file = "tally.csv"
            [tally.columns]
            stand = "stand"
            plot = "plot"
            tree = "tree"
            species = "species"
            dbh = { name = "dbh_cm", unit = "cm" }
            height = { name = "height_m", unit = "m" }
            [species.PSME]
            name = "Douglas-fir"
            [species.ABGR]
            name = "grand fir"
            [volume."*"]
            form = "schumacher_hall"
            a = -9.8
            b = 1.8
            c = 1.0
            log_base = "e"
            dbh_unit = "cm"
            height_unit = "m"
            volume_unit = "m3"
            source = "made up for this test"
            standing = "invented"
            """;

    private static final String STANDS = """
            stand,area_ha,region,stratum
            A,10,R,old
            B,30,R,young
            C,5,R,young
            D,7,R,old
            """;

    private static final String TALLY = """
            stand,plot,tree,species,dbh_cm,height_m
            A,1,1,PSME,40,28
            A,1,2,ABGR,30,22
            A,2,1,PSME,35,26
            A,3,1,PSME,50,31
            A,3,2,PSME,45,30
            B,1,1,PSME,20,15
            B,1,2,ABGR,22,17
            B,2,1,PSME,25,19
            B,3,,,,
            C,1,1,PSME,18,14
            """;

    /** The estate as it stands. */
    public SmallEstate() {
        this(DESIGN, STANDS, TALLY);
    }

    /** The same with another piece of the design. */
    public SmallEstate with(String old, String other) {
        return new SmallEstate(replaced(design, old, other), stands, tally);
    }

    /** The same with another piece of the table of stands. */
    public SmallEstate withStands(String old, String other) {
        return new SmallEstate(design, replaced(stands, old, other), tally);
    }

    /** The same with another piece of the tally. */
    public SmallEstate withTally(String old, String other) {
        return new SmallEstate(design, stands, replaced(tally, old, other));
    }

    /** The same with more at the end of the design. */
    public SmallEstate plus(String more) {
        return new SmallEstate(design + more, stands, tally);
    }

    private static String replaced(String text, String old, String other) {
        if (!text.contains(old)) {
            throw new IllegalArgumentException("no " + old);
        }
        return text.replace(old, other);
    }

    /** Writes design, table and tally into a folder; returns the design file. */
    public Path write(Path folder) throws IOException {
        Files.writeString(folder.resolve("stands.csv"), stands);
        Files.writeString(folder.resolve("tally.csv"), tally);
        return Files.writeString(folder.resolve("estate.toml"), design);
    }

    /** What comes of it. */
    public EstateResult result(Path folder) throws IOException {
        return run(write(folder));
    }

    /** What comes of a design of an estate that is in order. */
    public static EstateResult run(Path file) throws IOException {
        Design design = Objects.requireNonNull(DesignReader.read(file).design());
        return Estate.run(design, 2, new Memory(new ArrayList<>()), Progress.SILENT)
                .orElseThrow();
    }

    /** Keeps problems in memory and no state. */
    public record Memory(List<Problem> taken) implements EstateKeeping {
        @Override
        public void problems(List<Problem> problems) {
            taken.addAll(problems);
        }

        @Override
        public void keep(long rows, Writer state) {}

        @Override
        public Optional<DataInput> kept() {
            return Optional.empty();
        }

        @Override
        public boolean isDue() {
            return false;
        }
    }
}
