package quadmean.stats;

/**
 * Where a unit of a systematic sample stands.
 *
 * @param row number of its row on the grid
 * @param column number of its column
 */
public record GridPosition(int row, int column) {
    GridPosition right() {
        return new GridPosition(row, column + 1);
    }

    GridPosition above() {
        return new GridPosition(row + 1, column);
    }
}
