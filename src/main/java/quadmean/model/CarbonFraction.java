package quadmean.model;

/**
 * Share of dry biomass that is carbon.
 *
 * @param share the share, in (0, 1)
 * @param provenance where it comes from
 */
public record CarbonFraction(double share, Provenance provenance) {}
