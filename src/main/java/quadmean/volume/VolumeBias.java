package quadmean.volume;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * How far fitted volumes of a dbh class are off together.
 *
 * @param lower lower limit of the class (dbh unit of the fit)
 * @param upper upper limit, no longer in the class
 * @param trees number of trees
 * @param percent fitted minus observed volume in percent of observed
 */
public record VolumeBias(double lower, double upper, int trees, double percent) {
    /** Width of a class (common practice, no source). */
    private static double width(UnitSystem units) {
        return units == UnitSystem.US ? 2 : 5;
    }

    static List<VolumeBias> byClass(VolumeFit fit) {
        double width = width(fit.units());
        TreeMap<Long, List<Integer>> classes = new TreeMap<>();
        for (int i = 0; i < fit.trees().size(); i++) {
            double dbh = Unit.CENTIMETRE.convert(
                    fit.trees().get(i).dbhCm(), fit.units().diameter());
            // a limit that went through conversion belongs to the class that it begins
            long number = (long) Math.floor(dbh / width + 1e-9);
            classes.computeIfAbsent(number, k -> new ArrayList<>()).add(i);
        }
        return classes.entrySet().stream()
                .map(e -> {
                    int[] members = e.getValue().stream().mapToInt(i -> i).toArray();
                    double lower = e.getKey() * width;
                    return new VolumeBias(lower, lower + width, members.length, percent(fit, members));
                })
                .toList();
    }

    static double percent(VolumeFit fit, int[] members) {
        double fitted = IntStream.of(members).mapToDouble(i -> fit.fitted()[i]).sum();
        double observed = IntStream.of(members)
                .mapToDouble(i -> fit.trees().get(i).volumeM3())
                .sum();
        return 100 * (fitted / observed - 1);
    }
}
