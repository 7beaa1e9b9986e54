package quadmean.measure;

/** What is doubtful in the readings of a height, with what to do. */
public enum HeightFlag {
    DISTANCE_SHORT(
            "distance-short",
            "the distance is shorter than the tree is tall (common practice, no source): stand farther away; turn and"
                    + " walk there, never backward while sighting"),
    ANGLE_STEEP(
            "angle-steep",
            "an angle is beyond 45 degrees, where each error of the reading counts more than twice: stand farther away"),
    GROUND_NOT_LEVEL(
            "ground-not-level",
            "the base reading and the height of the eye say the ground is not level (beyond 10 %: common practice, no"
                    + " source): a distance taped along the ground is too long, give it with the ground slope"),
    SCALE_COARSE(
            "scale-coarse",
            "half a unit of this scale moves the height by more than 2.5 % here: read a finer scale or stand elsewhere"),
    TALLER_THAN_ANY(
            "taller-than-any",
            "no tree known is taller than about 116 m (from memory): check readings, scale and the unit of the distance"),
    READINGS_DISAGREE(
            "readings-disagree",
            "readings of one tree differ by more than 2.5 % (1 m on a 40 m tree; Brack and Wood, ANU notes): read it"
                    + " again, from another side"),
    INDEX_ERROR(
            "index-error",
            "the instrument reads false by more than half a unit (common practice, no source): have it adjusted, or take"
                    + " the error off every reading");

    private final String code;
    private final String sentence;

    HeightFlag(String code, String sentence) {
        this.code = code;
        this.sentence = sentence;
    }

    /** Short name for files and options. */
    public String code() {
        return code;
    }

    /** What is doubtful and what to do, for people. */
    public String sentence() {
        return sentence;
    }
}
