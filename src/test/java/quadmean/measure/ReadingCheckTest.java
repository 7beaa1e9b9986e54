package quadmean.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quadmean.support.Tolerance;
import quadmean.units.AngleScale;

/** Limits of the flags: common practice, no source, unless a test says otherwise. */
class ReadingCheckTest {
    private static final double EYE = CommonPractice.EYE_HEIGHT;

    @Test
    void goodReadingsHaveNoFlag() {
        assertEquals(Set.of(), flags(percent(72, -5, 30)));
    }

    @Test
    void standingTooCloseIsFlagged() {
        // 99 + 5 percent make the tree taller than the distance, the angle still below 45 degrees
        assertEquals(Set.of(HeightFlag.DISTANCE_SHORT), flags(percent(99, -5, 30)));
        assertEquals(Set.of(HeightFlag.DISTANCE_SHORT, HeightFlag.ANGLE_STEEP), flags(percent(101, -5, 30)));
    }

    @Test
    void aSteepAngleToTheBaseIsFlaggedToo() {
        Sighting s = new EyeToBaseSighting(new Readings(AngleScale.PERCENT, -30, -110), 40);
        assertTrue(flags(s).contains(HeightFlag.ANGLE_STEEP));
    }

    /** By definition: on level ground 1.5 m of eye at 30 m read -5 percent; -16 and +6 are 11 percent off. */
    @Test
    void groundThatIsNotLevelShowsInTheBaseReading() {
        assertEquals(Set.of(HeightFlag.GROUND_NOT_LEVEL), flags(percent(62, -16, 30)));
        assertEquals(Set.of(HeightFlag.GROUND_NOT_LEVEL), flags(percent(82, 6, 30)));
        assertEquals(Set.of(), flags(percent(62, -14, 30)));
        Slope seen =
                ReadingCheck.groundSlope(new HorizontalSighting(new Readings(AngleScale.PERCENT, 62, -16), 30), EYE);
        Tolerance.ROUNDING.check(-11, seen.on(AngleScale.PERCENT), "slope (%)");
    }

    @Test
    void aGivenSlopeNeedsNoFlag() {
        Readings r = new Readings(AngleScale.PERCENT, 62, -16);
        assertEquals(Set.of(), flags(new GroundSlopeSighting(r, 30, new Slope(-0.11))));
        assertEquals(Set.of(), flags(new EyeToBaseSighting(r, 30)));
    }

    /** By definition: half a unit of the scale made for 20 m is 0.5 m there, 2.5 % of 20 m. */
    @Test
    void aCoarseScaleIsFlagged() {
        Sighting eighteen = new HorizontalSighting(new Readings(AngleScale.METRES_AT_20, 16.5, -1.5), 20);
        assertEquals(Set.of(HeightFlag.SCALE_COARSE), flags(eighteen));
        Tolerance.ROUNDING.check(0.5, ReadingCheck.halfUnit(eighteen), "half a unit (m)");
        Sighting taller = new HorizontalSighting(new Readings(AngleScale.METRES_AT_20, 19.0, -1.6), 20);
        assertEquals(Set.of(HeightFlag.DISTANCE_SHORT), flags(taller));
    }

    /** Half a degree moves the top by D·sec²α·0.5·π/180 (derivative of the tangent). */
    @Test
    void halfADegreeAtFortyFive() {
        Sighting s = new HorizontalSighting(new Readings(AngleScale.DEGREES, 45, -3), 20);
        Tolerance.ROUNDING.check(20 * 2 * 0.5 * Math.PI / 180, ReadingCheck.halfUnit(s), "half a unit (m)");
    }

    @Test
    void threeShotsNeedNoDistance() {
        assertEquals(Set.of(), flags(new LaserSighting(new Readings(AngleScale.DEGREES, 12, -4), 20.4, 20)));
        assertEquals(Set.of(), flags(new LaserSighting(new Readings(AngleScale.DEGREES, 60, -4), 35, 17.5)));
    }

    /** From memory: the tallest tree known is near 116 m. */
    @Test
    void noTreeIsTallerThanAnyKnown() {
        assertEquals(Set.of(), flags(percent(62, -0.5, 200)));
        assertEquals(Set.of(HeightFlag.TALLER_THAN_ANY), flags(percent(66, -0.5, 200)));
    }

    @Test
    void flagsOfAllReadingsComeTogether() {
        TreeReadings tree = new TreeReadings(
                List.of(percent(72, -5, 30), percent(82, 6, 30), percent(70, -5, 30)), DistanceUse.ONE_DISTANCE);
        assertEquals(Set.of(HeightFlag.GROUND_NOT_LEVEL, HeightFlag.READINGS_DISAGREE), ReadingCheck.flags(tree, EYE));
    }

    @ParameterizedTest
    @EnumSource(HeightFlag.class)
    void everyFlagHasACodeAndSaysWhatToDo(HeightFlag flag) {
        assertTrue(flag.code().matches("[a-z]+(-[a-z]+)*"), flag.code());
        assertTrue(flag.sentence().contains(": "), flag.sentence());
    }

    @Test
    void codesAreUnique() {
        Set<String> codes = new HashSet<>();
        for (HeightFlag flag : HeightFlag.values()) {
            assertTrue(codes.add(flag.code()), flag.code());
        }
    }

    @Test
    void anEyeIsAboveTheGround() {
        assertThrows(IllegalArgumentException.class, () -> ReadingCheck.flags(percent(72, -5, 30), 0));
    }

    private static Set<HeightFlag> flags(Sighting sighting) {
        return ReadingCheck.flags(sighting, EYE);
    }

    private static Sighting percent(double top, double base, double distance) {
        return new HorizontalSighting(new Readings(AngleScale.PERCENT, top, base), distance);
    }
}
