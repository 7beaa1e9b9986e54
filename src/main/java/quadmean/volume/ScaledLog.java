package quadmean.volume;

import java.util.List;

/**
 * A log as it is scaled.
 *
 * @param pieces its pieces, butt first; none where the length rounds down to nothing
 */
public record ScaledLog(List<ScaledPiece> pieces) {
    public ScaledLog {
        pieces = List.copyOf(pieces);
    }

    /** Board feet of all pieces. */
    public double boardFeet() {
        return pieces.size() == 1
                ? pieces.get(0).boardFeet()
                : pieces.stream().mapToDouble(ScaledPiece::boardFeet).sum();
    }

    /** Board feet of the pieces that the table of the rule does not hold; 0 for rules that are formulas. */
    public double boardFeetBesideTable() {
        return pieces.stream()
                .filter(p -> p.coverage().besideTable())
                .mapToDouble(ScaledPiece::boardFeet)
                .sum();
    }

    /** Whether a piece lies outside the table of the rule. */
    public boolean besideTable() {
        return pieces.stream().anyMatch(p -> p.coverage().besideTable());
    }
}
