package quadmean.chart;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.internal.chartpart.Chart;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler;

/** The look that all charts share, and their way to SVG. */
final class Drawing {
    static final Color INK = new Color(0x222B26);
    private static final Color GRID = new Color(0xDFE4E0);
    private static final int WIDTH = 600;
    /** Pixels of a file for each unit of a drawing, enough for print a hand wide. */
    private static final int PIXELS = 2;

    private static final int HEIGHT = 420;
    private static final MathContext TICK_DIGITS = new MathContext(4);
    private static final int FONT = 18;
    private static final int MOST_ENTRIES_BELOW = 4;
    private static final int ENTRY_HEIGHT = 32;

    private Drawing() {}

    /**
     * A chart of points and lines.
     *
     * @param entries entries of its legend
     */
    static XYChart xy(String xTitle, String yTitle, int entries) {
        XYChart chart = new XYChartBuilder()
                .width(WIDTH)
                .height(Math.max(HEIGHT, ENTRY_HEIGHT * (entries + 1)))
                .xAxisTitle(xTitle)
                .yAxisTitle(yTitle)
                .build();
        dress(chart.getStyler());
        placeLegend(chart.getStyler(), entries);
        return chart;
    }

    /** The same with a legend of long names: a list below the chart. */
    static XYChart listed(String xTitle, String yTitle, int entries) {
        XYChart chart = new XYChartBuilder()
                .width(WIDTH)
                .height(HEIGHT + ENTRY_HEIGHT * entries)
                .xAxisTitle(xTitle)
                .yAxisTitle(yTitle)
                .build();
        dress(chart.getStyler());
        chart.getStyler()
                .setLegendPosition(Styler.LegendPosition.OutsideS)
                .setLegendLayout(Styler.LegendLayout.Vertical);
        return chart;
    }

    /** A bar chart whose legend has so many entries. */
    static CategoryChart bars(String xTitle, String yTitle, int entries) {
        CategoryChart chart = new CategoryChartBuilder()
                .width(WIDTH)
                .height(Math.max(HEIGHT, ENTRY_HEIGHT * (entries + 1)))
                .xAxisTitle(xTitle)
                .yAxisTitle(yTitle)
                .build();
        dress(chart.getStyler());
        placeLegend(chart.getStyler(), entries);
        chart.getStyler().setYAxisMin(0.0).setPlotGridVerticalLinesVisible(false);
        return chart;
    }

    private static void dress(AxesChartStyler styler) {
        Font font = new Font(Font.SANS_SERIF, Font.PLAIN, FONT);
        styler.setLocale(Locale.ROOT)
                .setAxisTitleFont(font)
                .setAxisTickLabelsFont(font)
                .setAxisTickLabelsColor(INK)
                .setAxisTickMarksColor(INK)
                .setPlotGridLinesColor(GRID)
                .setPlotGridLinesStroke(new BasicStroke(1f))
                .setErrorBarsColor(INK)
                .setyAxisTickLabelsFormattingFunction(Drawing::tick)
                .setAxisTickPadding(7)
                .setYAxisLabelAlignment(AxesChartStyler.TextAlignment.Right)
                .setPlotMargin(0)
                .setAxisTitlePadding(8);
        styler.setChartBackgroundColor(Color.WHITE)
                .setPlotBackgroundColor(Color.WHITE)
                .setPlotBorderVisible(false)
                .setChartFontColor(INK)
                .setChartTitleVisible(false)
                .setChartPadding(10)
                .setPlotContentSize(0.96)
                .setLegendFont(font)
                .setLegendBorderColor(Color.WHITE)
                .setLegendPadding(12)
                .setLegendSeriesLineLength(22)
                .setLegendPosition(Styler.LegendPosition.OutsideS)
                .setLegendLayout(Styler.LegendLayout.Horizontal);
    }

    /** A legend of many entries would run out of a line below the chart; it stands beside it. */
    private static void placeLegend(Styler styler, int entries) {
        if (entries > MOST_ENTRIES_BELOW) {
            styler.setLegendPosition(Styler.LegendPosition.OutsideE).setLegendLayout(Styler.LegendLayout.Vertical);
        }
    }

    /** A tick label: four digits, or whole with commas from a thousand up. */
    static String tick(double value) {
        return Math.abs(value) >= 1000
                ? String.format(Locale.ROOT, "%,d", Math.round(value))
                : Wording.plain(new BigDecimal(value).round(TICK_DIGITS).doubleValue());
    }

    /** A chart as a picture, in SVG and, when it is asked for, in pixels. */
    static Picture picture(Chart<?, ?> chart, String id, String title, String altText) {
        return new Picture(id, title, altText, svg(chart, id), Optional.of(() -> png(chart)));
    }

    private static byte[] png(Chart<?, ?> chart) {
        BufferedImage image =
                new BufferedImage(PIXELS * chart.getWidth(), PIXELS * chart.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.scale(PIXELS, PIXELS);
        chart.paint(pen, chart.getWidth(), chart.getHeight());
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** Draws a chart as an {@code svg} element whose ids start with a prefix. */
    static String svg(Chart<?, ?> chart, String prefix) {
        VectorGraphics2D drawing = new VectorGraphics2D();
        chart.paint(drawing, chart.getWidth(), chart.getHeight());
        return SvgPen.element(drawing, chart.getWidth(), chart.getHeight(), prefix);
    }
}
