package quadmean.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quadmean.audit.Combined;
import quadmean.audit.CombinedStand;
import quadmean.audit.StandTotal;
import quadmean.chart.Wording;
import quadmean.stats.Interval;
import quadmean.stats.MeanEstimate;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Numbers of combined stands in the units of the first design. */
final class CombineText {
    /** Sums of squares in another order differ by less than this. */
    private static final double SAME = 1e-9;

    private final Combined combined;
    private final UnitSystem units;

    CombineText(Combined combined) {
        this.combined = combined;
        this.units = combined.stands().get(0).cruise().design().units();
    }

    Unit unit() {
        return combined.attribute().unit(Basis.TOTAL, units);
    }

    String unitLabel() {
        return Wording.units(combined.stands().get(0).cruise().design(), combined.attribute(), Basis.TOTAL, units);
    }

    double in(double metric) {
        return combined.attribute().unit(Basis.TOTAL, UnitSystem.METRIC).convert(metric, unit());
    }

    /** What it does that stands share errors, in a sentence; empty without an error. */
    String sharing() {
        double se = combined.all().totalSe();
        if (!Double.isFinite(se)) {
            return "";
        }
        String sum = "The standard error of the sum is " + se(combined.all(), se) + " " + unitLabel();
        return se <= combined.averagedSe() * (1 + SAME)
                ? sum + "; no error that is known is shared by several stands."
                : sum + "; it would be " + se(combined.all(), combined.averagedSe())
                        + " if the errors that stands share averaged out, which they do not.";
    }

    /** How far the equations of the stands can be trusted, each said once; empty where nothing needs saying. */
    String standing() {
        Map<String, List<String>> stands = new LinkedHashMap<>();
        for (CombinedStand stand : combined.stands()) {
            String sentence = Facts.standingSentence(stand.cruise(), combined.attribute());
            if (!sentence.isEmpty()) {
                stands.computeIfAbsent(sentence, s -> new ArrayList<>()).add(stand.name());
            }
        }
        return String.join(
                " ",
                stands.entrySet().stream()
                        .map(e -> e.getValue().size() == combined.stands().size()
                                ? e.getKey()
                                : String.join(", ", e.getValue()) + ": " + e.getKey())
                        .toList());
    }

    private Rounding rounding(StandTotal t) {
        return Rounding.of(in(t.sampling().mean()), in(t.totalSe()));
    }

    String total(StandTotal t) {
        return rounding(t).text(in(t.sampling().mean()));
    }

    /** The total with its unit; a dash where it is not known. */
    String totalWithUnit(StandTotal t) {
        return Double.isFinite(t.sampling().mean()) ? total(t) + " " + unitLabel() : Rounding.UNKNOWN;
    }

    String se(StandTotal t, double se) {
        return rounding(t).text(in(se));
    }

    String error(MeanEstimate e) {
        double percent = e.samplingErrorPercent(combined.confidence());
        return Double.isFinite(percent) ? "±" + Rounding.percent(percent) : Rounding.UNKNOWN;
    }

    String limits(StandTotal t) {
        MeanEstimate e = t.withAll();
        if (!e.hasError()) {
            return Rounding.UNKNOWN;
        }
        Interval i = e.interval(combined.confidence());
        return rounding(t).text(in(i.lower())) + " to " + rounding(t).text(in(i.upper()));
    }

    String area(StandTotal t) {
        double area = Unit.HECTARE.convert(t.areaHa(), units.area());
        return Rounding.decimals(1).text(area) + " " + units.area().symbol();
    }
}
