package quadmean.volume;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quadmean.model.LogSettings;
import quadmean.model.Price;
import quadmean.model.Product;

/**
 * The cuts that one stem allows. Places are whole micrometres above the stump, in which hundredths of a foot and of a
 * metre are whole numbers, so that sums of lengths meet exactly.
 *
 * @param stem the stem
 * @param choices products and lengths open to it, the one preferred most first
 * @param stumpM height of the stump (m)
 * @param room length between stump and top (µm)
 * @param maker measures logs
 */
record StemCuts(StemToCut stem, List<Choice> choices, double stumpM, long room, LogMaker maker) {
    /** Diameters nearer than this (cm) are equal: rounding of doubles. */
    private static final double EQUAL_CM = 1e-9;

    private static final double PER_METRE = 1e6;

    /**
     * A product and one of its lengths.
     *
     * @param product the product
     * @param lengthM length without trim (m)
     * @param uses length with trim (µm)
     * @param price what it fetches; empty if it has no price
     */
    record Choice(Product product, double lengthM, long uses, Optional<Price> price) {}

    /** Whether a log can be cut at a place, and what is in the way; the order is that in which to look. */
    enum Fit {
        FITS,
        TOO_LARGE,
        TOO_SMALL,
        NO_ROOM
    }

    static StemCuts of(StemToCut stem, LogSettings settings, LogMaker maker) {
        List<Choice> choices = new ArrayList<>();
        for (Product product : settings.products()) {
            if (takes(product, stem)) {
                Optional<Price> price = maker.price(stem, product);
                product.lengthsM()
                        .forEach(l -> choices.add(new Choice(product, l, micrometres(l + settings.trimM()), price)));
            }
        }
        double room = stem.topM() - settings.stumpM();
        return new StemCuts(stem, choices, settings.stumpM(), micrometres(room), maker);
    }

    static long micrometres(double metres) {
        return Math.round(metres * PER_METRE);
    }

    private static boolean takes(Product product, StemToCut stem) {
        Set<String> species = product.species();
        boolean kind = species.isEmpty() || species.contains(stem.species()) || species.contains(stem.group());
        return kind && (product.grades().isEmpty() || product.grades().contains(stem.grade()));
    }

    /** What becomes of a choice at a place. */
    Fit fit(Choice choice, long place) {
        return fit(choice, place, largeEndCm(place), smallEndCm(choice, place));
    }

    /** What becomes of a choice at a place where the ends of its log are known (cm). */
    Fit fit(Choice choice, long place, double largeCm, double smallCm) {
        if (place + choice.uses() > room) {
            return Fit.NO_ROOM;
        }
        if (smallCm < choice.product().minSmallEndCm() - EQUAL_CM) {
            return Fit.TOO_SMALL;
        }
        return largeCm > choice.product().maxLargeEndCm() + EQUAL_CM ? Fit.TOO_LARGE : Fit.FITS;
    }

    /** Diameter of the stem at a place, the large end of every log that begins there (cm). */
    double largeEndCm(long place) {
        return stem.profile().dibCm(height(place));
    }

    /** Diameter at the small end of a choice at a place (cm); 0 beyond the tip. */
    double smallEndCm(Choice choice, long place) {
        return stem.profile().dibCm(height(place) + choice.lengthM());
    }

    /** What the log of a choice at a place fetches, its ends known (cm); NaN if that is not known. */
    double value(Choice choice, long place, double largeCm, double smallCm) {
        return maker.value(stem, choice, height(place), largeCm, smallCm);
    }

    /** The log of a choice at a place. */
    CutLog log(Choice choice, long place, int number) {
        return maker.log(stem, choice, number, height(place));
    }

    /** Why the stem has no log, by what came nearest to one at the stump. */
    NoLogs reasonForNone() {
        EnumSet<Fit> met = EnumSet.noneOf(Fit.class);
        choices.forEach(c -> met.add(fit(c, 0)));
        return switch (met.iterator().next()) {
            case FITS -> NoLogs.NO_VALUE;
            case TOO_LARGE -> NoLogs.TOO_LARGE;
            case TOO_SMALL -> NoLogs.TOO_SMALL;
            case NO_ROOM -> NoLogs.TOO_SHORT;
        };
    }

    private double height(long place) {
        return stumpM + place / PER_METRE;
    }
}
