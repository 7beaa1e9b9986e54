package quadmean.volume;

/**
 * A stem on its way to the saw.
 *
 * @param profile its diameters
 * @param species species code
 * @param group group of the species, empty if none
 * @param grade grade of the tree as tallied, empty if none
 * @param topM height above ground up to which it is used (m); see {@link UsableHeight}
 * @param defect share of its wood that is defect, in [0, 1]
 * @param greenKgPerM3 green weight of its wood (kg/m³), NaN if not known
 */
public record StemToCut(
        StemProfile profile,
        String species,
        String group,
        String grade,
        double topM,
        double defect,
        double greenKgPerM3) {}
