package quadmean.volume;

import java.util.List;
import quadmean.model.CubicRule;
import quadmean.model.FelledData;
import quadmean.model.Policy;
import quadmean.units.Unit;

/**
 * Measured stems summed section by section.
 *
 * @param settings how they were summed
 * @param stems the stems used, in the order of the table
 * @param data the table with the volumes, the account of its rows and every problem
 */
public record FelledSections(SectionSettings settings, List<SummedStem> stems, FelledData data) {
    public FelledSections {
        stems = List.copyOf(stems);
    }

    /**
     * Sums the stems of a table.
     *
     * @param data the table as read
     * @param badRows what happens to a tree that the settings do not suit: refuse or drop
     */
    public static FelledSections of(FelledData data, SectionSettings settings, Policy badRows) {
        return new FelledSums(data, settings, badRows).sum();
    }

    /** Whether bark was taken off. */
    static boolean hasBark(FelledData data) {
        return data.stems().stream().flatMap(s -> s.readings().stream()).anyMatch(r -> !Double.isNaN(r.barkCm()));
    }

    /** How the volumes came about, in words and in the units of the table. */
    static String words(FelledData data, SectionSettings settings) {
        Unit diameter = data.dbhUnit();
        Unit height = data.heightUnit();
        String stump = Double.isNaN(settings.stumpM())
                ? "the lowest point of each stem"
                : "a stump of " + Amounts.text(settings.stumpM(), Unit.METRE, height);
        String top = settings.topCm() > 0
                ? "a top diameter of " + Amounts.text(settings.topCm(), Unit.CENTIMETRE, diameter)
                : "the tip";
        String pairs =
                settings.rule() == CubicRule.SMALIAN ? "" : " over pairs of equal sections, Smalian for the rest";
        String bark = hasBark(data)
                ? "inside bark (twice the thickness measured at each point taken off)"
                : "on the side of the bark that the diameters were measured on";
        return "summed section by section by " + settings.rule().label() + " ("
                + settings.rule().formula() + ")" + pairs
                + ", above the highest point as a " + settings.tip().label() + ", from " + stump + " to " + top + ", "
                + bark;
    }
}
