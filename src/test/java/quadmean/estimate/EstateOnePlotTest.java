package quadmean.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quadmean.model.DegreesRule;
import quadmean.model.EstateOnePlot;
import quadmean.model.EstateStand;
import quadmean.model.FinitePopulation;
import quadmean.model.PlotDesign;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/**
 * A stand with one plot among others, worked by hand: plots of 0.1 ha with 1, 2, 3 trees (10, 20, 30 trees/ha) on 10 ha, 1 and 3 trees on
 * 20 ha, 2 trees on 30 ha. Within the first two stands s² is 100 and 200 on 2 and 1 degrees of freedom, pooled 400/3 (common practice, no
 * source); the variances of the means are 100/3, 100 and 400/3, with weights of 1/6, 1/3, 1/2.
 */
class EstateOnePlotTest {
    private static final PlotDesign PLOT = new PlotDesign.Fixed(0.1);
    private static final double A = 100 / 3.0 / 36;
    private static final double B = 100 / 9.0;
    private static final double C = 400 / 3.0 / 4;

    private static StandSums stand(int... treesByPlot) {
        List<Attribute> attributes = List.of(Attribute.TREES, Attribute.BASAL_AREA, Attribute.VOLUME);
        TreeShares shares = new TreeShares(PLOT, attributes);
        PlotSums plot = new PlotSums(attributes.size());
        StandSums sums = StandSums.none(attributes.size());
        for (int trees : treesByPlot) {
            plot.clear();
            for (int i = 0; i < trees; i++) {
                plot.add(shares, shares.once(new Stem("PSME", 30, 0.5)));
            }
            sums.add(plot, shares, new double[attributes.size()]);
        }
        return sums;
    }

    private static EstimateRow trees(DegreesRule rule, EstateOnePlot onePlot) {
        EstimateSettings settings =
                new EstimateSettings(PLOT, FinitePopulation.IGNORE, rule, 0.95, 10, Attribute.TREES, 5, "");
        List<EstateStand> stands = List.of(
                new EstateStand("A", 10, "", ""), new EstateStand("B", 20, "", ""), new EstateStand("C", 30, "", ""));
        List<StandSums> sums = List.of(stand(1, 2, 3), stand(1, 3), stand(2));
        return new EstateEstimator(stands, new ArrayList<>(sums), settings, onePlot)
                .estate().rows().stream()
                        .filter(r -> r.species().equals(EstimateRow.ALL)
                                && r.attribute() == Attribute.TREES
                                && r.basis() == Basis.PER_AREA)
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void singlePlotBorrowsTheVarianceWithinTheOthers() {
        EstimateRow row = trees(DegreesRule.PLOTS_MINUS_STRATA, EstateOnePlot.POOL);
        assertEquals(20, row.mean(), 1e-12);
        assertEquals(Math.sqrt(A + B + C), row.se(), 1e-12);
        assertEquals(3, row.df(), 0, "a borrowed variance brings no degrees of freedom");
    }

    @Test
    void satterthwaiteAsksHowWellItIsKnown() {
        double v = A + B + C;
        double df = v * v / (A * A / 2 + B * B / 1 + C * C / 3);
        assertEquals(df, trees(DegreesRule.SATTERTHWAITE, EstateOnePlot.POOL).df(), 1e-12);
    }

    @Test
    void withoutBorrowingThereIsNoError() {
        EstimateRow row = trees(DegreesRule.PLOTS_MINUS_STRATA, EstateOnePlot.NO_ERROR);
        assertEquals(20, row.mean(), 1e-12);
        assertTrue(Double.isNaN(row.se()));
        assertTrue(row.reason().contains("single plot"), row.reason());
        assertTrue(Stream.of(row.lower(), row.upper(), row.df()).allMatch(d -> Double.isNaN(d)));
    }
}
