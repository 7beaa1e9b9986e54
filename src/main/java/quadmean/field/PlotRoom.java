package quadmean.field;

import java.util.Locale;
import java.util.Optional;
import quadmean.design.Design;

/** With the correction for a finite population a piece of ground cannot hold more plots than have room in it. */
public final class PlotRoom {
    private PlotRoom() {}

    /**
     * What is wrong with the number of plots run.
     *
     * @param where the ground in words, such as {@code stratum N}
     * @param areaHa its area (ha)
     */
    public static Optional<String> overfull(Design design, String where, long run, double areaHa) {
        double room = design.finitePopulation().plotsIn(design.plot(), areaHa);
        return run <= room
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "%d plots were run in %s, which has room for %.1f of this size; check its area and the size of the plot,"
                                + " or write finite_population = \"ignore\"",
                        run,
                        where,
                        room));
    }
}
