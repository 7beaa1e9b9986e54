package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.PlotDesign;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/** Stand and stock tables: what holds whatever the plots. */
class ClassTableTest {
    private static final EstimateSettings POINTS = Stands.settings(new PlotDesign.Point(4));

    /** Classes of each species add up to its row, species to all species; the width of the classes changes no total. */
    @ParameterizedTest
    @CsvSource({"5, 14", "2.54, 15", "10, 16", "100, 17"})
    void classesAddUp(double width, long seed) {
        StandEstimate e = StandEstimator.estimate(Stands.TWO_STRATA, Stands.random(seed), width(width));
        for (Attribute attribute : List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME)) {
            for (Basis basis : List.of(Basis.PER_AREA, Basis.TOTAL)) {
                Map<String, Double> sums = e.structure().rows(attribute, basis).stream()
                        .collect(Collectors.groupingBy(
                                c -> c.row().species(),
                                Collectors.summingDouble(c -> c.row().mean())));
                assertEquals(4, sums.size(), "three species and all of them");
                sums.forEach((species, sum) -> Tolerance.ROUNDING.check(
                        e.row("*", species, attribute, basis).orElseThrow().mean(), sum, species + " " + attribute));
            }
        }
    }

    /** One class for everything has the errors of the whole as well. */
    @Test
    void oneClassIsTheWhole() {
        StandEstimate e = StandEstimator.estimate(Stands.TWO_STRATA, Stands.random(18), width(100));
        for (ClassRow c : e.structure().classes()) {
            EstimateRow r = c.row();
            assertEquals(e.row("*", r.species(), r.attribute(), r.basis()).orElseThrow(), r, "class of " + r.species());
        }
    }

    /** Classes without a tree stand in the table as zeros between those with trees. */
    @Test
    void emptyClassesAreZeros() {
        StandEstimate e = StandEstimator.estimate(
                Stands.TWO_STRATA,
                List.of(
                        Stands.plot("1", "A", 12, 41),
                        Stands.plot("2", "A", 13),
                        Stands.plot("3", "B", 12),
                        Stands.plot("4", "B")),
                width(10));
        List<ClassRow> rows = e.structure().rows(Attribute.TREES, Basis.PER_AREA).stream()
                .filter(c -> c.row().species().equals("X"))
                .toList();
        assertEquals(
                List.of(10.0, 20.0, 30.0, 40.0),
                rows.stream().map(c -> c.size().lowerCm()).toList());
        assertEquals(0, rows.get(1).row().mean());
        assertEquals(0, rows.get(2).row().mean());
        assertTrue(rows.get(3).row().mean() > 0);
        assertTrue(rows.stream().allMatch(c -> c.size().upperCm() - c.size().lowerCm() == 10));
    }

    /** Three times the volume of every tree: three times each number of the stock table and its error, trees as before. */
    @Test
    void volumesScale() {
        List<SampledPlot> plots = Stands.random(19);
        List<SampledPlot> threefold = plots.stream()
                .map(p -> new SampledPlot(
                        p.id(),
                        p.stratum(),
                        p.stems().stream()
                                .map(s -> new Stem(
                                        s.species(), s.dbhCm(), 3 * s.wood().volumeM3()))
                                .toList()))
                .toList();
        List<ClassRow> before = classes(plots);
        List<ClassRow> after = classes(threefold);
        for (int i = 0; i < before.size(); i++) {
            double k = before.get(i).row().attribute() == Attribute.VOLUME ? 3 : 1;
            assertEquals(k * before.get(i).row().mean(), after.get(i).row().mean(), 1e-9);
            assertEquals(k * before.get(i).row().se(), after.get(i).row().se(), 1e-9);
        }
    }

    private static List<ClassRow> classes(List<SampledPlot> plots) {
        return StandEstimator.estimate(Stands.TWO_STRATA, plots, POINTS)
                .structure()
                .classes();
    }

    private static EstimateSettings width(double cm) {
        return new EstimateSettings(
                POINTS.plot(),
                POINTS.finitePopulation(),
                POINTS.degreesRule(),
                POINTS.confidence(),
                POINTS.targetErrorPercent(),
                POINTS.target(),
                cm,
                "");
    }
}
