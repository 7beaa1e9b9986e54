package quadmean.volume;

import java.util.Optional;
import quadmean.model.LogSettings;
import quadmean.model.Price;
import quadmean.model.Price.PriceUnit;
import quadmean.model.PriceList;
import quadmean.model.Product;
import quadmean.volume.StemCuts.Choice;

/**
 * Measures and values logs.
 *
 * @param settings whether logs are scaled in board feet
 * @param prices what products fetch
 * @param measure how logs are measured
 */
record LogMaker(LogSettings settings, Optional<PriceList> prices, LogMeasure measure) {

    /** The log of a choice whose large end is at a height (m). */
    CutLog log(StemToCut stem, Choice choice, int number, double fromM) {
        Product product = choice.product();
        double length = choice.lengthM();
        double large = stem.profile().dibCm(fromM);
        double small = stem.profile().dibCm(fromM + length);
        double cubic = cubicMetres(stem, choice, fromM, large, small);
        double feet = boardFeet(choice, small, large);
        double sound = sound(stem, product);
        double value = value(stem, choice, cubic * sound, feet * sound);
        return new CutLog(number, product.code(), fromM, length, large, small, cubic, feet, 1 - sound, value);
    }

    /** What that log fetches, its ends known (cm): measured only in what its price asks for. */
    double value(StemToCut stem, Choice choice, double fromM, double largeCm, double smallCm) {
        if (choice.price().isEmpty()) {
            return value(stem, choice, Double.NaN, Double.NaN);
        }
        boolean byFeet = choice.price().get().unit() == PriceUnit.THOUSAND_BOARD_FEET;
        double sound = sound(stem, choice.product());
        return byFeet
                ? value(stem, choice, Double.NaN, boardFeet(choice, smallCm, largeCm) * sound)
                : value(stem, choice, cubicMetres(stem, choice, fromM, largeCm, smallCm) * sound, Double.NaN);
    }

    /** The price of a product of a stem. */
    Optional<Price> price(StemToCut stem, Product product) {
        return prices.flatMap(p -> p.find(product.code(), stem.species(), stem.group()));
    }

    private static double sound(StemToCut stem, Product product) {
        return (1 - stem.defect()) * (1 - product.defect());
    }

    private double cubicMetres(StemToCut stem, Choice choice, double fromM, double largeCm, double smallCm) {
        double middle = stem.profile().dibCm(fromM + choice.lengthM() / 2);
        return measure.cubicMetres(largeCm, middle, smallCm, choice.lengthM());
    }

    private double boardFeet(Choice choice, double smallCm, double largeCm) {
        if (settings.scaling().isEmpty()) {
            return Double.NaN;
        }
        return switch (choice.product().measure()) {
            case BOARD_FEET -> measure.boardFeet(smallCm, largeCm, choice.lengthM());
            case CUBIC -> 0;
        };
    }

    private double value(StemToCut stem, Choice choice, double netM3, double netBoardFeet) {
        if (prices.isEmpty()) {
            return Double.NaN;
        }
        return choice.price()
                .map(p -> p.amount() * LogValue.amount(p.unit(), netM3, netBoardFeet, stem.greenKgPerM3()))
                .orElse(0.0);
    }
}
