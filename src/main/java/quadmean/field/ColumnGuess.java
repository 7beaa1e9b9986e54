package quadmean.field;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import quadmean.design.ColumnRole;
import quadmean.design.HeaderUnits;

/** Guesses from the names in a header what its columns hold. */
final class ColumnGuess {
    private static final Map<ColumnRole, Set<String>> WORDS = words();

    private ColumnGuess() {}

    private static Map<ColumnRole, Set<String>> words() {
        Map<ColumnRole, Set<String>> words = new EnumMap<>(ColumnRole.class);
        words.put(ColumnRole.PLOT, Set.of("plot", "plotno", "plotnumber", "plotid", "point", "pointno", "pt", "plt"));
        words.put(ColumnRole.STRATUM, Set.of("stratum", "strata", "strat", "stratumcode"));
        words.put(ColumnRole.TREE, Set.of("tree", "treeno", "treenumber", "treeid", "tag", "tagno"));
        words.put(ColumnRole.SPECIES, Set.of("species", "sp", "spp", "spec", "speciescode", "spcode"));
        words.put(ColumnRole.DBH, Set.of("dbh", "diameter", "diam", "dia", "d", "dbhclass", "diameterclass"));
        words.put(ColumnRole.GIRTH, Set.of("girth", "gbh", "circumference", "circ", "cbh"));
        words.put(
                ColumnRole.HEIGHT,
                Set.of("height", "ht", "h", "totalheight", "totalht", "totht", "tht", "hgt", "treeheight"));
        words.put(ColumnRole.TOP, Set.of("top", "topreading", "tip"));
        words.put(ColumnRole.BASE, Set.of("base", "basereading", "bottom", "foot"));
        words.put(ColumnRole.DISTANCE, Set.of("distance", "dist", "horizontaldistance", "hdist", "hd"));
        words.put(ColumnRole.STATUS, Set.of("status", "treestatus", "condition"));
        words.put(ColumnRole.BROKEN, Set.of("broken", "brokentop"));
        words.put(ColumnRole.COUNT, Set.of("count", "n", "stems", "trees", "tally", "ntrees", "freq", "frequency"));
        words.put(ColumnRole.GRADE, Set.of("grade", "treegrade", "quality"));
        words.put(ColumnRole.DEFECT, Set.of("defect", "defectpct", "defectpercent", "cullpct", "cullpercent"));
        words.put(ColumnRole.LOGS, Set.of("logs", "nlogs", "numlogs", "logcount"));
        return words;
    }

    /** The columns by what they seem to hold; the first of several wins, and what is of no use alone is left out. */
    static Map<ColumnRole, String> of(List<String> header) {
        Map<ColumnRole, String> guess = new EnumMap<>(ColumnRole.class);
        WORDS.forEach((role, words) -> header.stream()
                .filter(name -> header.indexOf(name) == header.lastIndexOf(name))
                .filter(name -> words.contains(plain(name)))
                .findFirst()
                .ifPresent(name -> guess.put(role, name)));
        if (guess.containsKey(ColumnRole.DBH)) {
            guess.remove(ColumnRole.GIRTH);
        }
        List<ColumnRole> readings = List.of(ColumnRole.TOP, ColumnRole.BASE, ColumnRole.DISTANCE);
        if (!guess.keySet().containsAll(readings)) {
            readings.forEach(guess::remove);
        }
        return guess;
    }

    private static String plain(String name) {
        return HeaderUnits.bare(name).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }
}
