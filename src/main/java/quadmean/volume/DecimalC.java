package quadmean.volume;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import quadmean.model.Scaling.Figures;
import quadmean.model.Standing;

/**
 * Scribner Decimal C, a table in tens of board feet for 6 to 30 in and even lengths of 8 to 20 ft. It is no formula:
 * what lies outside is scaled by the Scribner formula rounded to tens, and the figure says so.
 */
final class DecimalC implements BoardFootRule {
    private static final String RESOURCE = "/quadmean/volume/scribner-decimal-c.csv";
    private static final double TEN = 10;
    private static final int SMALLEST_IN = 6;
    private static final int LARGEST_IN = 30;
    private static final int SHORTEST_FT = 8;
    private static final int LONGEST_FT = 20;

    private final Map<Cell, RuleFigure> cells;

    private record Cell(int inches, int feet) {}

    private DecimalC(Map<Cell, RuleFigure> cells) {
        this.cells = Map.copyOf(cells);
    }

    /** The table that travels with the program. */
    static DecimalC table() {
        return Loaded.TABLE;
    }

    /** Diameters between two whole inches count as the lower. Figures are in tens, whether rounding is asked or not. */
    @Override
    public RuleFigure figure(double inches, double feet, Figures figures) {
        double whole = Steps.down(Sizes.notNegative(inches, "diameter (in)"), 1);
        Coverage coverage = coverage(whole, Sizes.logFeet(feet));
        if (coverage.besideTable()) {
            RuleFigure formula = FormulaRule.SCRIBNER.figure(whole, feet, Figures.UNROUNDED);
            return new RuleFigure(Steps.nearest(formula.boardFeet(), TEN), coverage, formula.standing());
        }
        return Objects.requireNonNull(cells.get(new Cell((int) whole, (int) Math.round(feet))));
    }

    @Override
    public List<String> statement() {
        long seen = cells.values().stream()
                .filter(c -> c.standing() == Standing.VERIFIED)
                .count();
        return List.of(
                String.format(
                        Locale.ROOT,
                        "Board feet by the table Scribner Decimal C, %d to %d in and even lengths of %d to %d ft; of its"
                                + " %d cells %d were seen in print, the others are from memory.",
                        SMALLEST_IN,
                        LARGEST_IN,
                        SHORTEST_FT,
                        LONGEST_FT,
                        cells.size(),
                        seen),
                "Logs outside that table are scaled by the Scribner formula, " + FormulaRule.SCRIBNER.formula()
                        + ", rounded to tens of board feet (common practice, no source).");
    }

    @Override
    public String rounding() {
        return "to tens of board feet, as the table is; 5 for the one half of ten in it (6 in, 8 ft)";
    }

    private static Coverage coverage(double inches, double feet) {
        if (inches < SMALLEST_IN) {
            return Coverage.UNDER_SMALLEST_DIAMETER;
        }
        if (inches > LARGEST_IN) {
            return Coverage.OVER_LARGEST_DIAMETER;
        }
        boolean even = Steps.isMultiple(feet, 2);
        double nearest = even ? Steps.nearest(feet, 2) : feet;
        if (nearest < SHORTEST_FT) {
            return Coverage.UNDER_SHORTEST_LENGTH;
        }
        if (nearest > LONGEST_FT) {
            return Coverage.OVER_LONGEST_LENGTH;
        }
        return even ? Coverage.TABLE : Coverage.BETWEEN_LENGTHS;
    }

    /** Read when first asked for. */
    private static final class Loaded {
        static final DecimalC TABLE = read();

        private static DecimalC read() {
            try (InputStream in = Objects.requireNonNull(DecimalC.class.getResourceAsStream(RESOURCE), RESOURCE);
                    BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                Map<Cell, RuleFigure> cells = new HashMap<>();
                lines.lines().filter(l -> !l.startsWith("#")).skip(1).forEach(l -> add(l.split(",", -1), cells));
                return new DecimalC(cells);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static void add(String[] row, Map<Cell, RuleFigure> cells) {
            Standing standing = row[3].equals(Standing.VERIFIED.label()) ? Standing.VERIFIED : Standing.FROM_MEMORY;
            cells.put(
                    new Cell(Integer.parseInt(row[0]), Integer.parseInt(row[1])),
                    new RuleFigure(Double.parseDouble(row[2]) * TEN, Coverage.TABLE, standing));
        }
    }
}
