package quadmean.cruise;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.design.EstateSettings;
import quadmean.estimate.StandSums;
import quadmean.field.PlotRoom;
import quadmean.model.EstateStand;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;

/** What is wrong with the stands of an estate once all rows are read. */
final class EstateStandChecks {
    private final Design design;
    private final String table;
    private final List<EstateStand> stands;
    private final List<@Nullable StandSums> sums;

    /**
     * Stands to check.
     *
     * @param sums for each stand its sums, null without plots
     */
    EstateStandChecks(
            Design design, EstateSettings settings, List<EstateStand> stands, List<@Nullable StandSums> sums) {
        this.design = design;
        this.table = String.valueOf(settings.stands().getFileName());
        this.stands = stands;
        this.sums = sums;
    }

    /** Stands without plots, then those with more plots than have room. */
    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>(withoutPlots());
        problems.addAll(tooManyPlots());
        return problems;
    }

    private List<Problem> withoutPlots() {
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < stands.size(); i++) {
            if (sums.get(i) == null) {
                String code = stands.get(i).code();
                problems.add(new Problem(
                        table,
                        0,
                        "",
                        code,
                        Rule.STAND_WITHOUT_PLOTS,
                        design.policy(Rule.STAND_WITHOUT_PLOTS),
                        "stand " + code + " has no plot in the tally"));
            }
        }
        if (problems.size() == stands.size()) {
            problems.add(new Problem(
                    table,
                    0,
                    "",
                    "",
                    Rule.STRATUM_WITHOUT_PLOTS,
                    Policy.REFUSE,
                    "the tally has no rows that make a plot of any stand"));
        }
        return problems;
    }

    private List<Problem> tooManyPlots() {
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < stands.size(); i++) {
            EstateStand stand = stands.get(i);
            StandSums ofStand = sums.get(i);
            long run = ofStand == null ? 0 : ofStand.plots();
            PlotRoom.overfull(design, "stand " + stand.code(), run, stand.areaHa())
                    .ifPresent(detail -> problems.add(
                            new Problem(table, 0, "", stand.code(), Rule.STAND_TABLE, Policy.REFUSE, detail)));
        }
        return problems;
    }
}
