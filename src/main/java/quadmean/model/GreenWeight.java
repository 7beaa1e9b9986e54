package quadmean.model;

/**
 * Green weight of wood and bark for each unit of cubic volume.
 *
 * @param code species code, group, or {@code *} for all the rest
 * @param kgPerM3 factor (kg/m³)
 * @param provenance where it comes from
 */
public record GreenWeight(String code, double kgPerM3, Provenance provenance) {}
