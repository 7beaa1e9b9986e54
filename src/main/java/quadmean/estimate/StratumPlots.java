package quadmean.estimate;

/**
 * Plots of one stratum, run and needed.
 *
 * @param stratum stratum code
 * @param run plots run
 * @param needed plots needed in all, those run included and never fewer
 */
public record StratumPlots(String stratum, int run, int needed) {
    /** Plots still to run. */
    public int more() {
        return needed - run;
    }
}
