package quadmean.design;

import java.util.OptionalDouble;
import quadmean.model.Calibration;
import quadmean.model.HeightFilling;
import quadmean.model.HeightWeights;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Reads {@code [height]}. */
final class HeightParser {
    /** Under ten heights or so a curve of a species' own is no gain: common practice, no source. */
    private static final double DEFAULT_MIN_HEIGHTS = 10;

    /** In robust standard deviations; common practice, no source. */
    private static final double DEFAULT_OFF_CURVE = 4;

    /** Of millions of good heights hundreds lie four deviations away; common practice, no source. */
    private static final double ESTATE_OFF_CURVE = 6;

    private HeightParser() {}

    static Design.HeightEntry parse(Section root, UnitSystem units) {
        Section s = root.table("height");
        Design.HeightEntry entry = new Design.HeightEntry(
                s.number("breast_height", Range.POSITIVE, units.breastHeight()),
                (int) s.number("min_heights", Range.AT_LEAST_THREE, DEFAULT_MIN_HEIGHTS),
                s.number("off_curve", Range.POSITIVE, root.has("estate") ? ESTATE_OFF_CURVE : DEFAULT_OFF_CURVE),
                readings(s, units.length()),
                curves(s));
        s.close();
        return entry;
    }

    private static ReadingSettings readings(Section s, Unit length) {
        ReadingSettings usual = ReadingSettings.COMMON_PRACTICE;
        return new ReadingSettings(
                s.number("angle_sd", Range.NOT_NEGATIVE, usual.angleSdDegrees()),
                metres(s, "distance_sd", Range.NOT_NEGATIVE, usual.distanceSdM(), length),
                s.number("slope_sd", Range.NOT_NEGATIVE, usual.slopeSdDegrees()),
                metres(s, "eye_height", Range.POSITIVE, usual.eyeHeightM(), length));
    }

    private static CurveSettings curves(Section s) {
        CurveSettings usual = CurveSettings.USUAL;
        return new CurveSettings(
                s.choice("weights", Options.of(HeightWeights.values(), HeightWeights::id))
                        .orElse(usual.weights()),
                s.choice("calibrate", Options.of(Calibration.values(), Calibration::id))
                        .orElse(usual.calibration()),
                s.choice("fill", Options.of(HeightFilling.values(), HeightFilling::id))
                        .orElse(usual.filling()));
    }

    private static double metres(Section s, String key, Range range, double usual, Unit length) {
        OptionalDouble written = s.number(key, range);
        return written.isPresent() ? length.convert(written.getAsDouble(), Unit.METRE) : usual;
    }
}
