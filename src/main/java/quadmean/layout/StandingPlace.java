package quadmean.layout;

import java.util.List;
import java.util.stream.Stream;
import quadmean.design.Design;
import quadmean.design.ReadingSettings;
import quadmean.measure.AngleError;
import quadmean.measure.BestDistance;
import quadmean.measure.HeightErrors;
import quadmean.units.AngleScale;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * Where to stand for a height: the distance of least error under the errors that the design states.
 *
 * @param heightM height of the tree (m)
 * @param bestM distance of least error (m)
 * @param nearestM nearest distance with an error at most a tenth larger (m)
 * @param farthestM farthest such distance (m)
 * @param heightSdM standard deviation of the height at the best distance (m)
 */
public record StandingPlace(double heightM, double bestM, double nearestM, double farthestM, double heightSdM) {
    private static final List<Double> FEET = List.of(40.0, 60.0, 80.0, 110.0, 150.0);
    private static final List<Double> METRES = List.of(12.0, 18.0, 25.0, 35.0, 45.0);

    /** The places for some heights of trees; none where the errors of the design have no best distance. */
    static List<StandingPlace> of(Design design, AngleScale scale) {
        ReadingSettings sd = design.height().readings();
        HeightErrors errors = HeightErrors.commonPractice()
                .withAngle(AngleError.ofAngle(Math.toRadians(sd.angleSdDegrees())))
                .withDistanceSd(sd.distanceSdM());
        List<Double> heights = design.units() == UnitSystem.US ? FEET : METRES;
        return heights.stream()
                .map(h -> design.units().length().convert(h, Unit.METRE))
                .flatMap(h -> BestDistance.of(h, sd.eyeHeightM(), scale, errors)
                        .map(b -> new StandingPlace(h, b.distance(), b.nearest(), b.farthest(), b.heightSd()))
                        .map(Stream::of)
                        .orElseGet(Stream::empty))
                .toList();
    }
}
