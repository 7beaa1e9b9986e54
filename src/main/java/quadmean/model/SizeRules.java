package quadmean.model;

/**
 * How trees are sorted by size.
 *
 * @param classCm width of diameter classes (cm)
 * @param topHeight which trees make the top height
 * @param smallestCm smallest dbh that the crew tallied (cm); 0 where every tree was
 */
public record SizeRules(double classCm, TopHeight topHeight, double smallestCm) {

    /** Every tree was tallied; 100 trees per hectare make the top height. */
    public static SizeRules ofWidth(double classCm) {
        return new SizeRules(classCm, TopHeight.HUNDRED_PER_HECTARE, 0);
    }
}
