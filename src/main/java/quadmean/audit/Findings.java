package quadmean.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quadmean.audit.Finding.Kind;
import quadmean.design.AuditSettings;
import quadmean.design.Tolerances.Limit;
import quadmean.model.Tree;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * What a check found, as a list.
 *
 * @param settings how it was checked
 * @param units units of the sentences
 * @param matches every tree of the check plots
 * @param plots the check plots
 * @param crews how each crew reads
 * @param unknownPlots plots of the check that the cruise does not have
 */
record Findings(
        AuditSettings settings,
        UnitSystem units,
        List<TreeMatch> matches,
        List<PlotCheck> plots,
        List<CrewCheck> crews,
        List<String> unknownPlots) {
    /** From this share of the limiting distance on a tree is called borderline. Common practice, no source. */
    private static final double BORDERLINE = 0.9;

    List<Finding> list() {
        List<Finding> found = new ArrayList<>();
        crews.stream().filter(CrewCheck::isBiased).map(this::crew).forEach(found::add);
        for (TreeMatch m : matches) {
            switch (m.kind()) {
                case MISSED -> found.add(new Finding(Kind.MISSED, m.label(), alone(m.checkTree())));
                case EXTRA -> found.add(new Finding(Kind.EXTRA, m.label(), alone(m.crewTree())));
                default -> pair(m, found);
            }
        }
        plots.stream()
                .filter(p -> p.countedApart() != 0)
                .forEach(p -> found.add(new Finding(
                        Kind.COUNT,
                        p.plot(),
                        "the crew counted " + Math.abs(p.countedApart()) + (p.countedApart() > 0 ? " more" : " fewer")
                                + " than the checker")));
        unknownPlots.forEach(p -> found.add(new Finding(Kind.PLOT, p, "the cruise has no such plot")));
        found.sort(Comparator.comparing(Finding::kind));
        return found;
    }

    private Finding crew(CrewCheck c) {
        Unit unit = unit(c.reading());
        double k = scale(c.reading());
        return new Finding(
                Kind.CREW_BIAS,
                c.crew(),
                String.format(
                        Locale.ROOT,
                        "%s reads %s %.2f %s too %s on average (limits %.2f to %.2f, %d trees on %d plots)",
                        c.crew(),
                        c.reading().label(),
                        k * Math.abs(c.bias().mean()),
                        unit.symbol(),
                        c.bias().mean() > 0 ? "high" : "low",
                        k * c.limits().lower(),
                        k * c.limits().upper(),
                        c.trees(),
                        c.plots()));
    }

    private void pair(TreeMatch m, List<Finding> found) {
        if (!m.crewTree().species().equals(m.checkTree().species())) {
            found.add(new Finding(
                    Kind.SPECIES,
                    m.label(),
                    "the crew wrote " + m.crewTree().species() + ", the checker "
                            + m.checkTree().species()));
        }
        for (Reading reading : Reading.values()) {
            Optional<Limit> limit = reading.limit(settings.tolerances());
            if (reading.isIn(m) && limit.isPresent() && !holds(m, reading, limit.get())) {
                found.add(new Finding(Kind.OUTSIDE, m.label(), outside(m, reading, limit.get())));
            }
        }
    }

    /** Whether a reading is within its limit, or would be without a bias of its crew, which is a finding of its own. */
    private boolean holds(TreeMatch m, Reading reading, Limit limit) {
        double cruised = reading.cruised(m);
        double checked = reading.checked(m);
        return limit.holds(cruised, checked)
                || crews.stream()
                        .filter(c -> c.isBiased() && c.crew().equals(m.crew()) && c.reading() == reading)
                        .map(CrewCheck::limits)
                        .anyMatch(b -> limit.holds(
                                cruised - Math.min(b.upper(), Math.max(b.lower(), cruised - checked)), checked));
    }

    private String outside(TreeMatch m, Reading reading, Limit limit) {
        double k = scale(reading);
        String unit = reading == Reading.DEFECT ? "%" : unit(reading).symbol();
        return String.format(
                Locale.ROOT,
                "%s %.1f %s, the checker %.1f; apart by %.2f, allowed %.2f",
                reading.label(),
                k * reading.cruised(m),
                unit,
                k * reading.checked(m),
                k * Math.abs(reading.difference(m)),
                k * limit.allowed(reading.checked(m)));
    }

    private String alone(Tree tree) {
        double dbh = Unit.CENTIMETRE.convert(tree.dbhCm(), units.diameter());
        String text = String.format(
                Locale.ROOT,
                "%s, dbh %.1f %s",
                tree.species(),
                dbh,
                units.diameter().symbol());
        double reach = tree.detail().reach();
        if (Double.isNaN(reach)) {
            return text + "; its distance was not taken";
        }
        String what = reach >= BORDERLINE ? ": borderline" : "";
        return text + String.format(Locale.ROOT, "; at %.1f %% of the limiting distance", 100 * reach) + what;
    }

    private Unit unit(Reading reading) {
        return reading == Reading.HEIGHT ? units.length() : units.diameter();
    }

    private double scale(Reading reading) {
        return switch (reading) {
            case DBH -> Unit.CENTIMETRE.convert(1, units.diameter());
            case HEIGHT -> Unit.METRE.convert(1, units.length());
            case DEFECT -> 1;
        };
    }
}
