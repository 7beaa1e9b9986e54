package quadmean.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.CategoryChart;
import quadmean.cruise.EstateResult;
import quadmean.design.Design;
import quadmean.estimate.Bins;
import quadmean.estimate.EstateSpread;
import quadmean.units.UnitSystem;

/** The charts of an estate: estimates by species and stratum, and how its stands are spread. */
public final class EstateCharts {
    private static final Color STANDS = new Color(0x5F7A6B);
    private static final int LEVEL_LABELS = 7;

    private EstateCharts() {}

    /**
     * Draws the charts.
     *
     * @param spread how the stands differ in the attribute of the target
     */
    public static ChartSet of(EstateResult result, EstateSpread spread) {
        return ChartSet.drawn(() -> draw(result, spread));
    }

    private static List<Picture> draw(EstateResult result, EstateSpread spread) {
        Design design = result.design();
        UnitSystem units = design.units();
        SpeciesColours colours = SpeciesColours.of(result.estimate().species());
        List<Picture> pictures = new ArrayList<>(EstimateChart.pictures(result, colours));
        String what = Wording.perArea(spread.attribute(), units);
        if (!spread.means().counts().isEmpty()) {
            pictures.add(columns(
                    spread.means(),
                    Wording.axis(design, spread.attribute(), units),
                    "stands-by-mean",
                    "Stands by " + what + ". Each estimate has its own sampling error, which spreads the columns wider"
                            + " than the stands themselves are."
                            + Wording.targetRemark(design, result.used())));
        }
        if (!spread.errors().counts().isEmpty()) {
            pictures.add(columns(
                    spread.errors(),
                    "Sampling error (%)",
                    "stands-by-error",
                    String.format(
                            Locale.ROOT,
                            "Stands by the sampling error of %s at %s confidence: %,d of %,d stands with plots. Half of them"
                                    + " are below %.0f\u00a0%%; %,d %s the target of %s that is set for the estate.",
                            what,
                            Wording.confidence(result.estimate().confidence()),
                            spread.known(),
                            spread.stands(),
                            spread.medianErrorPercent(),
                            spread.withinTarget(),
                            spread.withinTarget() == 1 ? "meets" : "meet",
                            "±" + Wording.percent(design.targetErrorPercent()))));
        }
        return pictures;
    }

    private static Picture columns(Bins bins, String axis, String id, String title) {
        List<String> labels = new ArrayList<>();
        List<Long> counts = new ArrayList<>(bins.counts());
        for (int i = 0; i < bins.counts().size(); i++) {
            labels.add(Drawing.tick(bins.lower(i)) + "–" + Drawing.tick(bins.lower(i + 1)));
        }
        if (bins.beyond() > 0) {
            labels.add("more");
            counts.add(bins.beyond());
        }
        CategoryChart chart = Drawing.bars(axis, "Stands", 0);
        chart.getStyler().setAvailableSpaceFill(0.94).setLegendVisible(false);
        chart.getStyler().setXAxisLabelRotation(labels.size() > LEVEL_LABELS ? 90 : 0);
        chart.addSeries("stands", labels, counts).setFillColor(STANDS);
        String whole = title + " The lower limit belongs to a class, the upper to the next."
                + (bins.beyond() > 0 ? " The last column holds all beyond." : "");
        return Drawing.picture(chart, id, whole, "Columns of numbers of stands. " + whole);
    }
}
