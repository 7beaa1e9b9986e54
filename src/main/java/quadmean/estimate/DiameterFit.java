package quadmean.estimate;

import quadmean.stats.Weibull;

/**
 * The Weibull distribution of diameters (cm) of a stand.
 *
 * @param weibull the distribution
 * @param limitCm smallest dbh that was tallied (cm), from which on trees were fitted; 0 for all
 * @param treesPerHa trees that it was fitted to (trees/ha)
 */
public record DiameterFit(Weibull weibull, double limitCm, double treesPerHa) {

    /** Trees per hectare that it puts into a class, those below the smallest tallied dbh left out. */
    public double treesPerHa(DiameterClass size) {
        double from = Math.max(size.lowerCm(), limitCm);
        if (size.upperCm() <= from) {
            return 0;
        }
        return treesPerHa * weibull.between(from, size.upperCm()) / (1 - weibull.below(limitCm));
    }
}
