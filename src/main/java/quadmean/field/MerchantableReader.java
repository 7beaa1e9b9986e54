package quadmean.field;

import java.util.OptionalDouble;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.measure.HorizontalSighting;
import quadmean.measure.Readings;
import quadmean.model.Rule;
import quadmean.units.AngleScale;

/** Height to the merchantable top: the same sighting to another mark, from the horizontal distance. */
final class MerchantableReader {
    private MerchantableReader() {}

    static OptionalDouble read(Row row, Corrections corrections, RowProblems problems) {
        OptionalDouble mark = Numbers.read(row, ColumnRole.MERCHANTABLE_TOP, problems);
        if (mark.isEmpty()) {
            return OptionalDouble.empty();
        }
        // the other readings were read with the height: what cannot be read among them is noted already
        RowProblems unheard = problems.silent();
        OptionalDouble base = Numbers.read(row, ColumnRole.BASE, unheard);
        OptionalDouble distance = Numbers.read(row, ColumnRole.DISTANCE, unheard);
        ColumnSpec spec = row.file().columns().get(ColumnRole.MERCHANTABLE_TOP);
        AngleScale scale = spec == null || spec.scale() == null ? AngleScale.PERCENT : spec.scale();
        try {
            if (base.isEmpty() || distance.isEmpty()) {
                throw new IllegalArgumentException("it needs base and horizontal distance beside it");
            }
            double metres =
                    corrections.distance(SightingReader.metres(row, ColumnRole.DISTANCE, distance.getAsDouble()));
            Readings readings = new Readings(
                    scale,
                    corrections.reading(scale, mark.getAsDouble()),
                    corrections.reading(scale, base.getAsDouble()));
            return OptionalDouble.of(new HorizontalSighting(readings, metres).height());
        } catch (IllegalArgumentException e) {
            problems.add(
                    Rule.READING_UNUSABLE,
                    ColumnRole.MERCHANTABLE_TOP,
                    "the merchantable top cannot be worked out: " + e.getMessage());
            return OptionalDouble.empty();
        }
    }
}
