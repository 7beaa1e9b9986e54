package quadmean.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.measure.DistanceUse;
import quadmean.measure.EyeToBaseSighting;
import quadmean.measure.GroundSlopeSighting;
import quadmean.measure.HorizontalSighting;
import quadmean.measure.LaserSighting;
import quadmean.measure.Readings;
import quadmean.measure.Sighting;
import quadmean.measure.Slope;
import quadmean.measure.TreeReadings;
import quadmean.units.AngleScale;
import quadmean.units.Unit;

/** The sightings of a row, in whichever way the crew took them. */
final class SightingReader {
    private static final List<ColumnRole> ROLES = List.of(
            ColumnRole.TOP,
            ColumnRole.BASE,
            ColumnRole.DISTANCE,
            ColumnRole.SLOPE_DISTANCE,
            ColumnRole.GROUND_SLOPE,
            ColumnRole.BASE_DISTANCE,
            ColumnRole.TOP_DISTANCE,
            ColumnRole.TOP_2,
            ColumnRole.BASE_2,
            ColumnRole.DISTANCE_2);

    private final Corrections corrections;

    SightingReader(Corrections corrections) {
        this.corrections = corrections;
    }

    private static boolean isEmpty(Row row) {
        for (ColumnRole role : ROLES) {
            if (!row.text(role).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** What the row says of its sightings, for messages; empty if it has none. */
    static String text(Row row) {
        return isEmpty(row)
                ? ""
                : ROLES.stream()
                        .filter(r -> row.position().containsKey(r))
                        .map(r -> r.key().replace('_', ' ') + " " + (row.text(r).isEmpty() ? "(none)" : row.text(r)))
                        .collect(Collectors.joining(", "));
    }

    /**
     * The sightings of a row, one or two.
     *
     * @return empty if a number cannot be read, which is then noted
     * @throws IllegalArgumentException if a reading is missing or makes no sense; the message says which
     */
    Optional<TreeReadings> read(Row row, RowProblems problems) {
        int before = problems.list().size();
        List<OptionalDouble> numbers =
                ROLES.stream().map(r -> Numbers.read(row, r, problems)).toList();
        if (problems.list().size() > before) {
            return Optional.empty();
        }
        Source source = new Source(row, numbers, corrections);
        List<Sighting> sightings = new ArrayList<>(List.of(first(source)));
        DistanceUse use = DistanceUse.OWN_DISTANCES;
        if (Stream.of(ColumnRole.TOP_2, ColumnRole.BASE_2).anyMatch(source::has)) {
            Readings again = source.readings(ColumnRole.TOP_2, ColumnRole.BASE_2);
            boolean own = source.has(ColumnRole.DISTANCE_2);
            use = own ? DistanceUse.OWN_DISTANCES : DistanceUse.ONE_DISTANCE;
            double distance = own
                    ? source.distance(ColumnRole.DISTANCE_2)
                    : sightings.get(0).distance();
            sightings.add(new HorizontalSighting(again, distance));
        }
        return Optional.of(new TreeReadings(sightings, use));
    }

    private static Sighting first(Source source) {
        Readings readings = source.readings(ColumnRole.TOP, ColumnRole.BASE);
        if (source.has(ColumnRole.TOP_DISTANCE)) {
            return new LaserSighting(
                    readings, source.metres(ColumnRole.TOP_DISTANCE), source.metres(ColumnRole.BASE_DISTANCE));
        }
        if (source.has(ColumnRole.DISTANCE)) {
            return new HorizontalSighting(readings, source.distance(ColumnRole.DISTANCE));
        }
        if (source.has(ColumnRole.SLOPE_DISTANCE)) {
            Slope ground = Slope.of(source.scale(ColumnRole.GROUND_SLOPE), source.number(ColumnRole.GROUND_SLOPE));
            return new GroundSlopeSighting(readings, source.distance(ColumnRole.SLOPE_DISTANCE), ground);
        }
        if (source.has(ColumnRole.BASE_DISTANCE)) {
            return new EyeToBaseSighting(readings, source.metres(ColumnRole.BASE_DISTANCE));
        }
        throw new IllegalArgumentException("the distance is missing");
    }

    static double metres(Row row, ColumnRole role, double value) {
        ColumnSpec spec = row.file().columns().get(role);
        return (spec == null || spec.unit() == null ? Unit.METRE : spec.unit()).convert(value, Unit.METRE);
    }

    private record Source(Row row, List<OptionalDouble> numbers, Corrections corrections) {
        boolean has(ColumnRole role) {
            return numbers.get(ROLES.indexOf(role)).isPresent();
        }

        double number(ColumnRole role) {
            return numbers.get(ROLES.indexOf(role))
                    .orElseThrow(() ->
                            new IllegalArgumentException("the " + role.key().replace('_', ' ') + " is missing"));
        }

        double metres(ColumnRole role) {
            return SightingReader.metres(row, role, number(role));
        }

        /** A taped or paced distance, corrected; those of a laser are its own. */
        double distance(ColumnRole role) {
            return corrections.distance(metres(role));
        }

        AngleScale scale(ColumnRole role) {
            ColumnSpec spec = row.file().columns().get(role);
            return spec == null || spec.scale() == null ? AngleScale.PERCENT : spec.scale();
        }

        Readings readings(ColumnRole top, ColumnRole base) {
            if (scale(top) != scale(base)) {
                throw new IllegalArgumentException("top and base must be read on the same scale");
            }
            return new Readings(
                    scale(top),
                    corrections.reading(scale(top), number(top)),
                    corrections.reading(scale(base), number(base)));
        }
    }
}
