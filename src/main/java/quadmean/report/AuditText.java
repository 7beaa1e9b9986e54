package quadmean.report;

import java.util.Locale;
import quadmean.audit.CheckCruise;
import quadmean.audit.Judgement;
import quadmean.audit.Reading;
import quadmean.audit.ReadingCheck;
import quadmean.audit.ValueCheck;
import quadmean.chart.Wording;
import quadmean.design.AuditSettings.Chosen;
import quadmean.design.Tolerances.Limit;
import quadmean.stats.Interval;
import quadmean.stats.PairedDifference;
import quadmean.stats.PairedDifference.Equivalence;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Numbers of a check cruise in words and in the units of the design. */
final class AuditText {
    private final CheckCruise check;
    private final UnitSystem units;

    AuditText(CheckCruise check) {
        this.check = check;
        this.units = check.cruise().design().units();
    }

    /** The unit of a reading, percent for defect. */
    String unit(Reading reading) {
        return switch (reading) {
            case DBH -> units.diameter().symbol();
            case HEIGHT -> units.length().symbol();
            case DEFECT -> "%";
        };
    }

    /** A reading or difference in the unit of the design. */
    double in(Reading reading, double metric) {
        return switch (reading) {
            case DBH -> Unit.CENTIMETRE.convert(metric, units.diameter());
            case HEIGHT -> Unit.METRE.convert(metric, units.length());
            case DEFECT -> metric;
        };
    }

    String reading(Reading reading, double metric, int decimals) {
        return Rounding.decimals(decimals).text(in(reading, metric));
    }

    /** A difference with its sign. */
    static String signed(double value, int decimals) {
        return Double.isFinite(value)
                ? String.format(Locale.ROOT, (value == 0 ? "%,." : "%+,.") + decimals + "f", value == 0 ? 0.0 : value)
                : Rounding.UNKNOWN;
    }

    /** A percentage with its sign. */
    static String signedPercent(double value) {
        return Double.isFinite(value) ? signed(value, 1) + "\u00a0%" : Rounding.UNKNOWN;
    }

    /** What a limit allows. */
    String allowed(Reading reading, Limit limit) {
        return switch (limit.scale()) {
            case FIXED ->
                "±" + Wording.plain(in(reading, limit.within())) + " "
                        + (reading == Reading.DEFECT ? "points" : unit(reading));
            case STEPS ->
                "±" + Wording.plain(in(reading, limit.within())) + " " + unit(reading) + " for each "
                        + Wording.plain(in(reading, limit.step())) + " " + unit(reading) + " begun";
            case PERCENT -> "±" + Wording.plain(limit.within()) + " %";
        };
    }

    /** What a judgement allows, in words. */
    String allowed(Judgement j) {
        if (j.limit().isEmpty()) {
            return Rounding.UNKNOWN;
        }
        return check.readings().stream()
                .filter(r -> r.judgement().equals(j))
                .map(ReadingCheck::reading)
                .findFirst()
                .map(r -> allowed(r, j.limit().get()))
                .orElse("the same");
    }

    static String share(Judgement j) {
        return j.n() == 0 ? Rounding.UNKNOWN : Rounding.percent(100 * j.share());
    }

    /** The bound that matters: from below where the share passes, from above where it fails. */
    static String bound(Judgement j, Interval bounds) {
        boolean fails = j.verdict().isFailure();
        double bound = fails ? bounds.upper() : bounds.lower();
        return Double.isFinite(bound)
                ? (fails ? "at most " : "at least ") + Rounding.percent(100 * bound)
                : Rounding.UNKNOWN;
    }

    Unit valueUnit(Basis basis) {
        return check.value().attribute().unit(basis, units);
    }

    double value(double metric, Basis basis) {
        Attribute attribute = check.value().attribute();
        return attribute.unit(basis, UnitSystem.METRIC).convert(metric, attribute.unit(basis, units));
    }

    /** How far the cruise is off, in a sentence. */
    String valueSentence() {
        ValueCheck v = check.value();
        if (!v.reason().isEmpty()) {
            return "Plot values were not compared: " + v.reason() + ".";
        }
        return String.format(
                Locale.ROOT,
                "%s of the check plots: the crew's lies %.1f %% %s the checker's on average (%s, %s).",
                Wording.capital(v.attribute().label()),
                Math.abs(v.percent()),
                v.percent() >= 0 ? "above" : "below",
                pairedTest(v.paired()),
                Headline.count(v.paired().n(), "plot"));
    }

    private String pairedTest(PairedDifference paired) {
        if (!paired.isTestable()) {
            return paired.n() < 2 ? "no limits and no test" : untested(paired);
        }
        Interval limits = paired.estimate().interval(0.95);
        return "95 % limits " + percentOf(limits.lower()) + " to " + percentOf(limits.upper()) + " %, paired t test "
                + p(paired.pValue());
    }

    private static String untested(PairedDifference paired) {
        return paired.n() < 2
                ? "no limits and no test from a single plot"
                : "no limits and no test: the difference is the same on every plot";
    }

    /** A difference per hectare in percent of the checker's mean. */
    String percentOf(double difference) {
        return signed(100 * difference / check.value().meanChecked(), 1);
    }

    static String p(double value) {
        if (!Double.isFinite(value)) {
            return "p unknown";
        }
        return value < 0.0001 ? "p < 0.0001" : String.format(Locale.ROOT, "p = %.4f", value);
    }

    /** How far the equations can be trusted; empty where nothing needs saying. */
    String standing() {
        return Facts.standingSentence(check.cruise(), check.value().attribute());
    }

    /** Whether crew and checker are shown to agree, in a sentence. */
    String equivalenceSentence() {
        ValueCheck v = check.value();
        if (v.equivalence().isEmpty()) {
            return v.reason().isEmpty()
                    ? "No margin was fixed beforehand (audit.margin), so nothing shows that the two agree; that they do not"
                            + " differ significantly would be no proof."
                    : "";
        }
        Equivalence e = v.equivalence().get();
        if (!v.paired().isTestable()) {
            return "Whether the two agree within the margin was not tested (" + untested(v.paired()) + ").";
        }
        String margin = Wording.plain(100 * e.margin() / v.meanChecked());
        String inside = "90 % limits " + percentOf(e.interval().lower()) + " to "
                + percentOf(e.interval().upper()) + " %, margin ±" + margin + " %, two one-sided tests at 5 %, "
                + p(e.pValue());
        String by = check.settings().chosen() == Chosen.RANDOM
                ? ""
                : "; the plots were chosen by judgement, so that this holds for them alone";
        return e.isShown()
                ? "Shown to agree within the margin (" + inside + by + ")."
                : "Not shown to agree within the margin (" + inside + by + ").";
    }

    /** What it does to the stand, in a sentence; empty where nothing can be said. */
    String standSentence() {
        ValueCheck v = check.value();
        if (!v.reason().isEmpty()
                || !Double.isFinite(v.standTotal())
                || check.settings().chosen() != Chosen.RANDOM) {
            return "";
        }
        Unit unit = valueUnit(Basis.TOTAL);
        Rounding rounding = Rounding.significant(value(v.standTotal(), Basis.TOTAL), 4);
        return "The stand as cruised: " + rounding.text(value(v.standTotal(), Basis.TOTAL)) + " " + unit.label()
                + "; with the ratio of the check plots " + rounding.text(value(v.standAsChecked(), Basis.TOTAL)) + " "
                + unit.label() + ". The ratio carries the error of "
                + Headline.count(v.paired().n(), "plot")
                + ": mend the readings rather than the total.";
    }
}
