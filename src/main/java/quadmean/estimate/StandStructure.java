package quadmean.estimate;

import java.util.List;
import java.util.Optional;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/**
 * The stand by size, and numbers that describe it as a whole.
 *
 * @param classes stand and stock table: by attribute and class, from the smallest class with a tree to the largest, empty ones
 *     among them, all species first; per unit area and total
 * @param statistics stand statistics, of the whole stand first, then of each stratum where there are several
 * @param diameters the fitted distribution of diameters; empty where none could be fitted
 */
public record StandStructure(List<ClassRow> classes, List<StandStatistic> statistics, Optional<DiameterFit> diameters) {
    /** Nothing known. */
    public static final StandStructure NONE = new StandStructure(List.of(), List.of(), Optional.empty());

    public StandStructure {
        classes = List.copyOf(classes);
        statistics = List.copyOf(statistics);
    }

    /** The classes, each once, in ascending order. */
    public List<DiameterClass> sizes() {
        return classes.stream().map(ClassRow::size).distinct().toList();
    }

    /** The attributes of the table, in its order. */
    public List<Attribute> attributes() {
        return classes.stream().map(c -> c.row().attribute()).distinct().toList();
    }

    /** The rows of one attribute on one basis. */
    public List<ClassRow> rows(Attribute attribute, Basis basis) {
        return classes.stream()
                .filter(c -> c.row().attribute() == attribute && c.row().basis() == basis)
                .toList();
    }

    /** One statistic of a stratum, or of the whole stand ({@code *}), if it is there. */
    public Optional<StandStatistic> statistic(String stratum, Statistic statistic) {
        return statistics.stream()
                .filter(s -> s.stratum().equals(stratum) && s.statistic() == statistic)
                .findFirst();
    }
}
