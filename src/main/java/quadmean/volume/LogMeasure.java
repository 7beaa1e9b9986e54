package quadmean.volume;

/** How a log is measured; all diameters inside bark, lengths without trim. */
public interface LogMeasure {
    /**
     * Cubic volume of a log.
     *
     * @param largeEndCm diameter at the large end (cm)
     * @param middleCm diameter in the middle (cm)
     * @param smallEndCm diameter at the small end (cm)
     * @param lengthM length (m)
     * @return m³
     */
    double cubicMetres(double largeEndCm, double middleCm, double smallEndCm, double lengthM);

    /**
     * Volume of a log by the log rule and the scaling convention in use.
     *
     * @param smallEndCm diameter at the small end (cm)
     * @param largeEndCm diameter at the large end (cm), from which the ends of pieces of a long log follow
     * @param lengthM length (m)
     * @return board feet
     */
    double boardFeet(double smallEndCm, double largeEndCm, double lengthM);
}
