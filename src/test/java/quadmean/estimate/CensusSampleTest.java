package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.support.Tolerance;
import quadmean.units.Attribute;
import quadmean.units.BasalArea;
import quadmean.units.Basis;

/** A complete tally is the sum of its trees, by definition; strata A of 30 ha and B of 10 ha. */
class CensusSampleTest {
    private static final List<SampledPlot> PARTS = Stands.random(7);
    private static final StandEstimate STAND = StandEstimator.estimate(
            Stands.TWO_STRATA, PARTS, Stands.settings(new PlotDesign.Complete(new Measuring.All())));

    private static double total(String stratum, String species, Attribute attribute) {
        EstimateRow row = STAND.row(stratum, species, attribute, Basis.TOTAL).orElseThrow();
        assertEquals(0, row.se(), "nothing is left to chance");
        assertEquals(row.mean(), row.lower());
        assertEquals(row.mean(), row.upper());
        return row.mean();
    }

    private static double sum(String stratum, String species, Attribute attribute) {
        return PARTS.stream()
                .filter(p -> stratum.equals("*") || p.stratum().equals(stratum))
                .flatMap(p -> p.stems().stream())
                .filter(s -> species.equals("*") || s.species().equals(species))
                .mapToDouble(s -> switch (attribute) {
                    case TREES -> 1;
                    case BASAL_AREA -> BasalArea.ofTree(s.dbhCm());
                    default -> s.wood().volumeM3();
                })
                .sum();
    }

    @ParameterizedTest
    @EnumSource(
            value = Attribute.class,
            names = {"TREES", "BASAL_AREA", "VOLUME"})
    void totalsAreSumsOfTreesInStrataAndSpecies(Attribute attribute) {
        for (String stratum : List.of("*", "A", "B")) {
            for (String species : List.of("*", "X", "Y", "Z")) {
                Tolerance.ROUNDING.check(
                        sum(stratum, species, attribute), total(stratum, species, attribute), stratum + " " + species);
            }
        }
    }

    @Test
    void eachHectareHasItsShare() {
        EstimateRow row = STAND.row("B", "*", Attribute.TREES, Basis.PER_AREA).orElseThrow();
        Tolerance.ROUNDING.check(sum("B", "*", Attribute.TREES) / 10, row.mean(), "trees per hectare");
    }

    @Test
    void theTargetIsMetWithoutError() {
        PlotsNeeded needed = STAND.needed().get(0);
        assertEquals(PlotsNeeded.Verdict.MET, needed.verdict());
        assertEquals(0, needed.achievedPercent());
    }
}
