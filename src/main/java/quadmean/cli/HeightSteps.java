package quadmean.cli;

import java.util.ArrayList;
import java.util.List;
import quadmean.measure.ErrorShares;
import quadmean.measure.EyeToBaseSighting;
import quadmean.measure.GroundSlopeSighting;
import quadmean.measure.HeightErrors;
import quadmean.measure.LaserSighting;
import quadmean.measure.Readings;
import quadmean.measure.Sighting;

/** The arithmetic of a height, step by step. */
final class HeightSteps {
    private HeightSteps() {}

    static List<String> of(Sighting sighting, HeightErrors errors, Figures figures) {
        List<String> steps = new ArrayList<>();
        Readings r = sighting.readings();
        steps.add("Step by step:");
        steps.add("  top  " + reading(r, r.top()) + "; base " + reading(r, r.base()));
        steps.add("  " + distance(sighting, figures));
        steps.add("  " + height(sighting, figures));
        ErrorShares by = errors.shares(sighting);
        steps.add("  one sd of each moves it by: distance " + figures.first(by.distance(), 3)
                + (sighting instanceof LaserSighting ? ", distance to top " + figures.first(by.topDistance(), 3) : "")
                + ", top " + figures.first(by.topAngle(), 3) + ", base " + figures.first(by.baseAngle(), 3)
                + (sighting instanceof GroundSlopeSighting ? ", slope " + figures.first(by.groundSlope(), 3) : ""));
        steps.add("  root of the sum of squares " + figures.first(by.total(), 3));
        return steps;
    }

    private static String reading(Readings r, double reading) {
        double tangent = r.scale().tangent(reading);
        return Figures.plain(reading) + " " + r.scale().id() + " = tangent " + Figures.number(tangent, 4) + " = "
                + Figures.number(Math.toDegrees(Math.atan(tangent)), 2) + "°";
    }

    private static String distance(Sighting sighting, Figures figures) {
        String level = figures.first(sighting.distance(), 3);
        if (sighting instanceof GroundSlopeSighting s) {
            return "D = S·cos slope = " + figures.first(s.slopeDistance(), 3) + " / "
                    + Figures.number(s.ground().secant(), 4) + " = " + level;
        }
        if (sighting instanceof EyeToBaseSighting s) {
            return "D = S·cos base = " + figures.first(s.tapeDistance(), 3) + " × "
                    + Figures.number(Math.cos(s.readings().baseAngle()), 4) + " = " + level;
        }
        if (sighting instanceof LaserSighting s) {
            return "distances: top " + figures.first(s.topDistance(), 3) + ", base "
                    + figures.first(s.baseDistance(), 3);
        }
        return "D = " + level;
    }

    private static String height(Sighting sighting, Figures figures) {
        Readings r = sighting.readings();
        String result = " = " + figures.first(sighting.height(), 3);
        if (sighting instanceof LaserSighting s) {
            return "H = S top·sin top - S base·sin base = " + figures.first(s.topDistance(), 3) + " × "
                    + Figures.number(Math.sin(r.topAngle()), 4) + " - " + figures.first(s.baseDistance(), 3) + " × ("
                    + Figures.number(Math.sin(r.baseAngle()), 4) + ")" + result;
        }
        return "H = D·(tan top - tan base) = " + figures.first(sighting.distance(), 3) + " × ("
                + Figures.number(r.topTangent(), 4) + " - (" + Figures.number(r.baseTangent(), 4) + "))" + result;
    }
}
