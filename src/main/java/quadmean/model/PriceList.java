package quadmean.model;

import java.util.List;
import java.util.Optional;

/**
 * Prices of products.
 *
 * @param currency currency as it is printed, such as {@code USD}
 * @param date what day or season they hold for, as written; empty if not stated
 * @param prices the prices
 * @param provenance where they come from
 */
public record PriceList(String currency, String date, List<Price> prices, Provenance provenance) {
    public PriceList {
        prices = List.copyOf(prices);
    }

    /** The price of a product of a species: its own, else its group's, else that for all the rest. */
    public Optional<Price> find(String product, String species, String group) {
        Optional<Price> own = exact(product, species);
        return own.or(() -> group.isEmpty() ? Optional.empty() : exact(product, group))
                .or(() -> exact(product, "*"));
    }

    private Optional<Price> exact(String product, String species) {
        return prices.stream()
                .filter(p -> p.product().equals(product) && p.species().equals(species))
                .findFirst();
    }
}
