package quadmean.audit;

/**
 * A plot in both tallies.
 *
 * @param plot plot number
 * @param stratum code of its stratum
 * @param crew its crew
 * @param matched trees that both have
 * @param missed trees that the checker alone has
 * @param extra trees that the crew alone has
 * @param countedApart crew's less checker's count of trees that were counted and not measured
 * @param cruised value per hectare from the crew's readings, in the metric unit of the attribute; NaN if not known
 * @param checked the same from the checker's
 */
public record PlotCheck(
        String plot,
        String stratum,
        String crew,
        int matched,
        int missed,
        int extra,
        int countedApart,
        double cruised,
        double checked) {
    /** Whether crew and checker have the same trees. */
    public boolean isCountRight() {
        return missed == 0 && extra == 0 && countedApart == 0;
    }

    /** Crew less checker, per hectare. */
    public double difference() {
        return cruised - checked;
    }
}
