package quadmean.design;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quadmean.model.TreeStatus;
import quadmean.units.Attribute;

/**
 * Which trees count in what.
 *
 * @param statuses for each attribute, the statuses that count in it
 * @param minMerchantableCm smallest dbh that counts in volume (cm)
 * @param statusCodes further codes of the tally and what they mean
 */
public record Counting(
        Map<Attribute, Set<TreeStatus>> statuses, double minMerchantableCm, Map<String, TreeStatus> statusCodes) {
    /** Living trees count as trees and basal area, sound living ones as volume: common practice, no source. */
    public static final Counting STANDARD = new Counting(standard(), 0, Map.of());

    public Counting {
        statuses = Map.copyOf(statuses);
        statusCodes = Map.copyOf(statusCodes);
    }

    private static Map<Attribute, Set<TreeStatus>> standard() {
        Map<Attribute, Set<TreeStatus>> map = new EnumMap<>(Attribute.class);
        map.put(Attribute.TREES, EnumSet.of(TreeStatus.LIVE, TreeStatus.CULL));
        map.put(Attribute.BASAL_AREA, EnumSet.of(TreeStatus.LIVE, TreeStatus.CULL));
        map.put(Attribute.VOLUME, EnumSet.of(TreeStatus.LIVE));
        return map;
    }

    /** Whether a tree counts in an attribute. */
    public boolean counts(Attribute attribute, TreeStatus status, double dbhCm) {
        Attribute like = like(attribute);
        boolean big = like != Attribute.VOLUME || dbhCm >= minMerchantableCm;
        return big && statuses.getOrDefault(like, Set.of()).contains(status);
    }

    /** What is made of volume counts as volume does; biomass and carbon count as trees do. */
    private static Attribute like(Attribute attribute) {
        return switch (attribute) {
            case LOG_VOLUME, NET_LOG_VOLUME, BOARD_FEET, NET_BOARD_FEET, VALUE, GREEN_WEIGHT -> Attribute.VOLUME;
            case BIOMASS, CARBON, QUADRATIC_MEAN_DIAMETER -> Attribute.TREES;
            case TREES, BASAL_AREA, VOLUME -> attribute;
        };
    }

    /**
     * What a tally means by a status: one of the design's codes, else the word or its first letter in any case; empty
     * means live.
     */
    public Optional<TreeStatus> status(String written) {
        TreeStatus coded = statusCodes.get(written);
        if (coded != null || written.isEmpty()) {
            return Optional.of(coded == null ? TreeStatus.LIVE : coded);
        }
        String low = written.toLowerCase(Locale.ROOT);
        for (TreeStatus status : TreeStatus.values()) {
            if (low.equals(status.id()) || low.equals(status.id().substring(0, 1))) {
                return Optional.of(status);
            }
        }
        return Optional.empty();
    }
}
