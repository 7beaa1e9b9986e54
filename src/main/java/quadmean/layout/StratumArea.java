package quadmean.layout;

/**
 * An area on the map beside that of the design.
 *
 * @param code code of the stratum, {@code *} for all
 * @param mapHa on the map (ha)
 * @param designHa by the design (ha)
 */
public record StratumArea(String code, double mapHa, double designHa) {
    /** How much larger the map has it, in percent of the design's. */
    public double differencePercent() {
        return 100 * (mapHa / designHa - 1);
    }
}
