package quadmean.estimate;

import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.TreeSet;
import quadmean.units.Attribute;

/** The stand and stock table: what stands in each diameter class, by species. */
final class ClassTable {
    private ClassTable() {}

    /** Rows by attribute, class and species; none where no tree was tallied. */
    static List<ClassRow> of(Sample sample, List<SampledPlot> plots, EstimateSettings settings) {
        double width = settings.sizes().classCm();
        List<Stem> stems = plots.stream().flatMap(p -> p.stems().stream()).toList();
        if (stems.isEmpty()) {
            return List.of();
        }
        IntSummaryStatistics range = stems.stream()
                .mapToInt(s -> DiameterClass.number(s.dbhCm(), width))
                .summaryStatistics();
        List<String> species = new ArrayList<>(List.of(EstimateRow.ALL));
        species.addAll(new TreeSet<>(stems.stream().map(Stem::species).toList()));
        RowMaker maker = new RowMaker(sample, settings, EstimateRow.ALL);
        List<ClassRow> table = new ArrayList<>();
        for (Attribute attribute : attributes(settings)) {
            for (int k = range.getMin(); k <= range.getMax(); k++) {
                DiameterClass size = DiameterClass.of(k, width);
                for (String s : species) {
                    maker.rows(s, attribute, size).forEach(row -> table.add(new ClassRow(size, row)));
                }
            }
        }
        return table;
    }

    private static List<Attribute> attributes(EstimateSettings settings) {
        return settings.attributes().stream().filter(ClassTable::isTabled).toList();
    }

    /** What a stand or stock table shows; gross logs, weight and carbon have rows of the stand only. */
    private static boolean isTabled(Attribute attribute) {
        return switch (attribute) {
            case TREES, BASAL_AREA, VOLUME, NET_LOG_VOLUME, NET_BOARD_FEET, VALUE -> true;
            case LOG_VOLUME, BOARD_FEET, GREEN_WEIGHT, BIOMASS, CARBON, QUADRATIC_MEAN_DIAMETER -> false;
        };
    }
}
