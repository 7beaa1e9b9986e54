package quadmean.cli;

import static quadmean.cli.PocketCommand.usage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import quadmean.measure.AngleError;
import quadmean.measure.DistanceUse;
import quadmean.measure.EyeToBaseSighting;
import quadmean.measure.GroundSlopeSighting;
import quadmean.measure.HeightErrors;
import quadmean.measure.HorizontalSighting;
import quadmean.measure.LaserSighting;
import quadmean.measure.Readings;
import quadmean.measure.Sighting;
import quadmean.measure.TreeReadings;

/** Turns the options of {@code quadmean height} into sightings and errors. */
final class SightingBuilder {
    private final HeightOptions options;
    private final PocketCommand command;

    SightingBuilder(HeightOptions options, PocketCommand command) {
        this.options = options;
        this.command = command;
    }

    TreeReadings readings() {
        int n = options.tops.size();
        if (options.bases.size() != n) {
            throw usage("there are " + n + " top and " + options.bases.size() + " base readings: give one --base for"
                    + " each --top");
        }
        List<Amount> typed = distances();
        int each = options.laser.isEmpty() ? 1 : 2;
        if (typed.size() != each && typed.size() != each * n) {
            throw usage("give one distance for all readings, or one for each of the " + n);
        }
        List<Sighting> sightings = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int at = typed.size() == each ? 0 : each * i;
            sightings.add(sighting(readings(i), typed.subList(at, at + each)));
        }
        boolean shared = typed.size() == each && options.sides == Choices.Sides.ANY;
        return new TreeReadings(sightings, shared ? DistanceUse.ONE_DISTANCE : DistanceUse.OWN_DISTANCES);
    }

    /** The one list of distances that was given. */
    List<Amount> distances() {
        List<List<Amount>> given = Stream.of(options.distances, options.slopeDistances, options.laser)
                .filter(l -> !l.isEmpty())
                .toList();
        if (given.size() != 1) {
            throw usage("give the distance in one way: --distance, --slope-distance or --laser");
        }
        boolean sloping = !options.slopeDistances.isEmpty();
        if (sloping == (options.groundSlope == null && !options.toBase)) {
            throw usage(
                    sloping
                            ? "--slope-distance needs --ground-slope (such as 20%) or --to-base"
                            : "--ground-slope and --to-base go with --slope-distance");
        }
        if (options.groundSlope != null && options.toBase) {
            throw usage(
                    "a distance runs along the ground (--ground-slope) or straight to the base (--to-base), not both");
        }
        return given.get(0);
    }

    HeightErrors errors() {
        HeightErrors errors = HeightErrors.commonPractice();
        if (options.readingSd != null) {
            errors = errors.withAngle(
                    options.readingSd.unit().isEmpty()
                            ? AngleError.ofScaleUnits(options.readingSd.value())
                            : AngleError.ofAngle(radians(options.readingSd, "--reading-sd")));
        }
        if (options.distanceSd != null) {
            errors = errors.withDistanceSd(command.metres(options.distanceSd, "--distance-sd"));
        }
        return options.slopeSd == null ? errors : errors.withSlopeSd(radians(options.slopeSd, "--slope-sd"));
    }

    /** An angle in degrees, in radians. */
    static double radians(Amount typed, String option) {
        if (!typed.unit().equals("deg") && !typed.unit().equals("°")) {
            throw usage(option + " " + typed + " is no angle: write 0.25deg");
        }
        return Math.toRadians(typed.value());
    }

    private Readings readings(int i) {
        return new Readings(options.scale, options.tops.get(i), options.bases.get(i));
    }

    private Sighting sighting(Readings readings, List<Amount> typed) {
        String option = "the distance";
        double first = command.metres(typed.get(0), option);
        Amount ground = options.groundSlope;
        if (typed.size() == 2) {
            return new LaserSighting(readings, first, command.metres(typed.get(1), option));
        }
        if (ground != null) {
            return new GroundSlopeSighting(readings, first, PocketCommand.slope(ground, "--ground-slope"));
        }
        return options.toBase ? new EyeToBaseSighting(readings, first) : new HorizontalSighting(readings, first);
    }
}
