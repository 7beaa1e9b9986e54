package quadmean.measure;

/** Which way a tree leans, seen by the one who sights. */
public enum LeanDirection {
    /** Toward the observer: reads high. */
    TOWARD,
    /** Away from the observer: reads low. */
    AWAY,
    /** At right angles to the line of sight: reads a little low. */
    ACROSS
}
