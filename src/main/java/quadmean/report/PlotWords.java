package quadmean.report;

import java.util.Locale;
import quadmean.chart.Wording;
import quadmean.model.Measuring;
import quadmean.model.PlotDesign;
import quadmean.model.Sweep;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Words for what a plot chooses and what of it is measured. */
final class PlotWords {
    private PlotWords() {}

    static String sweep(Sweep sweep) {
        return sweep == Sweep.FULL
                ? ""
                : String.format(
                        Locale.ROOT,
                        " A %s sweep at each, on a side fixed by rule or drawn at random: each tree counts %d times.",
                        sweep.id(),
                        sweep.multiplier());
    }

    static String size(PlotDesign.Strip strip, UnitSystem units) {
        Unit unit = units.length();
        return Wording.plain(rounded(strip.widthM(), unit)) + " " + unit.label() + " wide and "
                + Wording.plain(rounded(strip.lengthM(), unit)) + " " + unit.label() + " long";
    }

    private static double rounded(double metres, Unit unit) {
        return Math.round(Unit.METRE.convert(metres, unit) * 100) / 100.0;
    }

    static String measuring(Measuring measuring) {
        if (measuring instanceof Measuring.SomePoints) {
            return " Trees are measured on some of them and counted on the others.";
        }
        if (measuring instanceof Measuring.LargerFactor larger) {
            return " Trees are counted; those that a factor of "
                    + Wording.plain(Math.round(larger.basalAreaFactor() * 1e4) / 1e4) + " "
                    + Unit.SQUARE_METRES_PER_HECTARE.label() + " ("
                    + Wording.plain(Math.round(Unit.SQUARE_METRES_PER_HECTARE.convert(
                                            larger.basalAreaFactor(), Unit.SQUARE_FEET_PER_ACRE)
                                    * 1e4)
                            / 1e4)
                    + " " + Unit.SQUARE_FEET_PER_ACRE.label() + ") chooses are measured.";
        }
        if (measuring instanceof Measuring.ThreeP threeP) {
            return " Each tree has a prediction, and is measured if a random number up to "
                    + Wording.plain(threeP.limit()) + " does not exceed it (3P sampling).";
        }
        return "";
    }
}
