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
     * @param way whether it can be walked as it lies
     */
    public record Leg(
            int day,
            String from,
            String to,
            double trueBearing,
            double compassBearing,
            double horizontalM,
            double slopeM,
            Way way) {}

    /** What a straight leg meets. */
    public enum Way {
        /** It stays on the tract. */
        OPEN("", ""),
        /** It crosses a hole in the tract, and is longer than the map says. */
        AROUND("around", "walk around"),
        /** It leaves the tract. */
        OUTSIDE("outside", "off the tract");

        private final String id;
        private final String words;

        Way(String id, String words) {
            this.id = id;
            this.words = words;
        }

        /** The mark in files, empty where there is nothing to say. */
        public String id() {
            return id;
        }

        /** What the crew reads. */
        public String words() {
            return words;
        }
    }

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
