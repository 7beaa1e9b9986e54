package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import quadmean.audit.PlotState;
import quadmean.audit.PlotState.State;
import quadmean.audit.ProgressReport;
import quadmean.audit.Stopping;
import quadmean.chart.Wording;
import quadmean.design.Design;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.PlotsNeeded;
import quadmean.model.StoppingRule;
import quadmean.model.Stratum;
import quadmean.stats.Interval;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** A cruise under way in sentences. */
final class ProgressText {
    private final ProgressReport report;
    private final Design design;

    ProgressText(ProgressReport report) {
        this.report = report;
        this.design = report.design();
    }

    /** How many plots are run. */
    String plots() {
        long done = report.count(State.DONE);
        long missing = report.count(State.MISSING);
        long away = report.count(State.NOT_REACHED);
        return report.stopping().state() == Stopping.State.NO_LIST
                ? Headline.count(done, "plot") + " run; the design lists no plots, so that none are known to be missing"
                : done + " of " + Headline.count(done + missing + away, "plot") + " run"
                        + (missing > 0 ? ", " + missing + " missing" : "")
                        + (away > 0 ? ", " + away + " not reached" : "");
    }

    /** Plots of a stratum that are missing, in the order of the plan. */
    List<String> missing(String stratum) {
        return report.plots().stream()
                .filter(p -> p.stratum().equals(stratum) && p.state() == State.MISSING)
                .map(PlotState::plot)
                .toList();
    }

    /** The stand's total from all plots so far. */
    String estimate() {
        return report.cruise()
                .estimate()
                .row(EstimateRow.ALL, EstimateRow.ALL, design.targetAttribute(), Basis.TOTAL)
                .map(row -> {
                    RowText text = RowText.of(report.cruise().design(), row, design.units());
                    return RowText.hasLimits(row)
                            ? row.attribute().label() + " " + text.estimate() + ", "
                                    + Wording.confidence(design.confidence()) + " limits " + text.limits()
                            : "no limits for the " + row.attribute().label() + " yet: " + row.reason();
                })
                .orElse("no estimate of a total");
    }

    /** How far the equations can be trusted; empty where nothing needs saying. */
    String standing() {
        return Facts.standingSentence(report.cruise(), design.targetAttribute());
    }

    /** Error against target, and plots that should reach it. */
    String target() {
        PlotsNeeded needed = report.cruise().estimate().needed().get(0);
        boolean isEnough = needed.more().isPresent() && needed.more().getAsInt() == 0;
        boolean goesOn = report.stopping().decision() == Stopping.Decision.FINISH_SUBSET
                || report.stopping().decision() == Stopping.Decision.FINISH_PLAN
                || report.stopping().decision() == Stopping.Decision.GO_ON;
        return Headline.achieved(report.cruise(), needed) + " "
                + (isEnough && goesOn
                        ? "By their number alone the plots run would be enough; that is no reason to stop before the rule"
                                + " says so."
                        : Headline.more(needed));
    }

    /** What must be said of an estimate from part of a route; empty for a whole one. */
    String caution() {
        String strata = report.notBegun().isEmpty()
                ? ""
                : "No plot yet in "
                        + String.join(
                                ", ",
                                report.notBegun().stream().map(Stratum::name).toList())
                        + ": the estimate is of the other strata alone. ";
        return (strata + ofSubsets() + ofState()).strip();
    }

    /** What is wrong with the subsets; empty if nothing is. */
    private String ofSubsets() {
        StringBuilder text = new StringBuilder();
        if (!report.inNoSubset().isEmpty()) {
            text.append("In no subset, and so in no estimate from whole subsets: plots ")
                    .append(String.join(", ", report.inNoSubset()))
                    .append(". ");
        }
        if (!report.notInPlan().isEmpty()) {
            text.append("Subsets name plots that are not in the plan: ")
                    .append(String.join(", ", report.notInPlan()))
                    .append(". ");
        }
        for (Stratum s : design.stratumList()) {
            List<String> without = report.withoutPlotsIn(s);
            if (!without.isEmpty()) {
                text.append("No plot in ")
                        .append(s.name())
                        .append(" in subset ")
                        .append(String.join(", ", without))
                        .append(": it is no sample of the whole tract. ");
            }
        }
        return text.toString();
    }

    private String ofState() {
        return switch (report.stopping().state()) {
            case PART_WALKED, NO_SUBSETS ->
                "Part walked: the plots run so far are no sample of the tract. The numbers show how the work goes, and are"
                        + " no estimate of the stand until "
                        + (report.stopping().state() == Stopping.State.PART_WALKED ? "the subset" : "the plan")
                        + " is walked to its end.";
            case NO_LIST -> "Without a list of plots nobody can tell whether those run are a sample of the tract.";
            default -> "";
        };
    }

    /** The decision with its reasons. */
    List<String> stopping() {
        Stopping s = report.stopping();
        StoppingRule rule = design.followUp().progress().rule();
        int minimum = design.followUp().progress().minimumPlots();
        List<String> lines = new ArrayList<>();
        lines.add(s.decision().words() + ".");
        if (report.subsets().isEmpty()) {
            return lines;
        }
        String name = rule == StoppingRule.TWO_STAGE ? "Two stages" : "Sequential";
        if (s.first().n() == 0) {
            lines.add(name + ": the first stage is the first subsets that together have " + minimum
                    + " plots; they are not walked to their end yet.");
        } else if (!s.first().hasError()) {
            lines.add(name + ": the first stage has no error; each stratum needs two plots in it.");
        } else if (rule == StoppingRule.TWO_STAGE) {
            lines.add(name + ": the first " + s.first().n() + " plots ask for " + Rounding.count((long) s.plotsNeeded())
                    + " in all; whole subsets have " + s.reported().n() + ".");
        } else {
            lines.add(name + ": from " + minimum + " plots on, at the end of each whole subset.");
        }
        if (s.reported().hasError()) {
            lines.add("From whole subsets: " + reported(s.reported()) + ".");
        }
        return lines;
    }

    private String reported(MeanEstimate e) {
        Attribute attribute = design.targetAttribute();
        Unit metric = attribute.unit(Basis.PER_AREA, UnitSystem.METRIC);
        Unit unit = attribute.unit(Basis.PER_AREA, design.units());
        Interval limits = e.interval(design.confidence());
        Rounding rounding = Rounding.of(metric.convert(e.mean(), unit), metric.convert(e.se(), unit));
        return attribute.label() + " " + rounding.text(metric.convert(e.mean(), unit)) + " "
                + Wording.units(report.cruise().design(), attribute, Basis.PER_AREA, design.units()) + ", limits "
                + rounding.text(metric.convert(limits.lower(), unit)) + " to "
                + rounding.text(metric.convert(limits.upper(), unit)) + " (±"
                + Rounding.percent(e.samplingErrorPercent(design.confidence())) + ", "
                + Headline.count(e.n(), "plot") + ")";
    }
}
