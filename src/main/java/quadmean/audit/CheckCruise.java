package quadmean.audit;

import java.util.List;
import java.util.stream.Stream;
import quadmean.cruise.CruiseResult;
import quadmean.design.AuditSettings;
import quadmean.model.Tally;

/**
 * A cruise held against a second tally of some of its plots.
 *
 * @param cruise the cruise
 * @param settings how it is checked
 * @param check the checker's tally
 * @param matches every tree of the check plots
 * @param plots the check plots
 * @param readings dbh, height and defect
 * @param species whether species agree
 * @param count whether crews had the right trees, plot by plot
 * @param crews how each crew reads
 * @param value what it does to plots and stand
 * @param findings what was found, the gravest first
 * @param notes what a reader should know, in sentences
 */
public record CheckCruise(
        CruiseResult cruise,
        AuditSettings settings,
        Tally check,
        List<TreeMatch> matches,
        List<PlotCheck> plots,
        List<ReadingCheck> readings,
        Judgement species,
        Judgement count,
        List<CrewCheck> crews,
        ValueCheck value,
        List<Finding> findings,
        List<String> notes) {
    public CheckCruise {
        matches = List.copyOf(matches);
        plots = List.copyOf(plots);
        readings = List.copyOf(readings);
        crews = List.copyOf(crews);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
    }

    /** What the check comes to. */
    public enum Verdict {
        PASSED("passed", "Passed"),
        FAILED("failed", "Failed"),
        NOT_JUDGED("not_judged", "Not judged");

        private final String id;
        private final String label;

        Verdict(String id, String label) {
            this.id = id;
            this.label = label;
        }

        /** The name used in JSON. */
        public String id() {
            return id;
        }

        /** The name used on pages. */
        public String label() {
            return label;
        }
    }

    /** Everything that was held against a limit or could have been. */
    public List<Judgement> judgements() {
        return Stream.concat(readings.stream().map(ReadingCheck::judgement), Stream.of(species, count))
                .toList();
    }

    /** What fell short, in words; empty if nothing did. */
    public List<String> reasons() {
        return judgements().stream()
                .filter(j -> j.verdict().isFailure())
                .map(j -> String.format(
                        java.util.Locale.ROOT,
                        "%s: %d of %d %s within the limit (%.1f %%), %s asked for",
                        j.what(),
                        j.within(),
                        j.n(),
                        j.unit(),
                        100 * j.share(),
                        j.limit().orElseThrow().demand()))
                .toList();
    }

    /** Failed if any share falls short of what the design asks for; not judged where it asks for nothing. */
    public Verdict verdict() {
        if (!reasons().isEmpty()) {
            return Verdict.FAILED;
        }
        boolean judged = judgements().stream()
                .anyMatch(
                        j -> j.verdict() == Judgement.Verdict.PASSES || j.verdict() == Judgement.Verdict.PASSES_BARELY);
        return judged ? Verdict.PASSED : Verdict.NOT_JUDGED;
    }
}
