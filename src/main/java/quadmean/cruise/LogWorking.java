package quadmean.cruise;

import java.util.List;
import java.util.Optional;
import quadmean.model.Price;
import quadmean.volume.CutLog;
import quadmean.volume.ScaledPiece;

/**
 * A log of a tree, as it was scaled and priced.
 *
 * @param log the log
 * @param pieces its pieces with the figures of the log rule; none without a log rule, or where the product is not scaled by it
 * @param price the price of its product, if there is one
 */
public record LogWorking(CutLog log, List<ScaledPiece> pieces, Optional<Price> price) {
    public LogWorking {
        pieces = List.copyOf(pieces);
    }
}
