package quadmean.volume;

import java.util.Optional;
import quadmean.model.LogSettings;
import quadmean.model.Price;
import quadmean.model.PriceList;
import quadmean.model.Product;

/**
 * Measures and values logs.
 *
 * @param settings whether logs are scaled in board feet
 * @param prices what products fetch
 * @param measure how logs are measured
 */
record LogMaker(LogSettings settings, Optional<PriceList> prices, LogMeasure measure) {

    /** The log of a length (m, without trim) whose large end is at a height (m). */
    CutLog log(StemToCut stem, Product product, int number, double fromM, double lengthM) {
        StemProfile profile = stem.profile();
        double large = profile.dibCm(fromM);
        double small = profile.dibCm(fromM + lengthM);
        double cubic = measure.cubicMetres(large, profile.dibCm(fromM + lengthM / 2), small, lengthM);
        double feet = boardFeet(product, small, large, lengthM);
        double sound = (1 - stem.defect()) * (1 - product.defect());
        double value = value(stem, product, cubic * sound, feet * sound);
        return new CutLog(number, product.code(), fromM, lengthM, large, small, cubic, feet, 1 - sound, value);
    }

    private double boardFeet(Product product, double smallCm, double largeCm, double lengthM) {
        if (settings.scaling().isEmpty()) {
            return Double.NaN;
        }
        return switch (product.measure()) {
            case BOARD_FEET -> measure.boardFeet(smallCm, largeCm, lengthM);
            case CUBIC -> 0;
        };
    }

    private double value(StemToCut stem, Product product, double netM3, double netBoardFeet) {
        if (prices.isEmpty()) {
            return Double.NaN;
        }
        Optional<Price> price = prices.get().find(product.code(), stem.species(), stem.group());
        return price.map(p -> p.amount() * LogValue.amount(p.unit(), netM3, netBoardFeet, stem.greenKgPerM3()))
                .orElse(0.0);
    }
}
