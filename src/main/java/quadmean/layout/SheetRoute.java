package quadmean.layout;

import java.util.List;

/**
 * How the plots are walked.
 *
 * @param start where each day starts and ends
 * @param startName what the start is called
 * @param legs legs in the order they are walked
 * @param days loads of the days
 */
public record SheetRoute(SheetPlace start, String startName, List<Leg> legs, List<Day> days) {
    public SheetRoute {
        legs = List.copyOf(legs);
        days = List.copyOf(days);
    }

    /**
     * A straight leg.
     *
     * @param day day on which it is walked, from 1
     * @param from number of the plot where it starts, or the name of the start
     * @param to number of the plot where it ends, or the name of the start
     * @param trueBearing degrees clockwise from true north, 0 to 360
     * @param compassBearing degrees clockwise from magnetic north, NaN if no declination is known
     * @param horizontalM horizontal distance (m)
     * @param slopeM distance along the ground (m), NaN where the slope is not known
     */
    public record Leg(
            int day,
            String from,
            String to,
            double trueBearing,
            double compassBearing,
            double horizontalM,
            double slopeM) {}

    /**
     * A day's work.
     *
     * @param day day, from 1
     * @param plots plots done
     * @param walkM horizontal distance walked (m)
     * @param hours hours that it takes
     */
    public record Day(int day, int plots, double walkM, double hours) {}
}
