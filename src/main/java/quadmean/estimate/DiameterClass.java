package quadmean.estimate;

/**
 * Trees of one species in one diameter class.
 *
 * @param lowerCm lower limit of the class (cm), which belongs to it
 * @param upperCm upper limit (cm), which belongs to the next
 * @param species species code
 * @param treesPerHa mean number of trees (trees/ha)
 */
public record DiameterClass(double lowerCm, double upperCm, String species, double treesPerHa) {}
