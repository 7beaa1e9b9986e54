package quadmean.field;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.design.HeaderUnits;
import quadmean.design.Nearest;
import quadmean.design.TallyFile;
import quadmean.model.Policy;
import quadmean.model.Rule;

/**
 * A tally's header matched to the columns of the design.
 *
 * @param file the tally with the units of its columns known
 * @param position where each column in use stands
 * @param names the names of all columns as the header has them
 */
record Header(TallyFile file, Map<ColumnRole, Integer> position, List<String> names) {
    /** Number of columns. */
    int size() {
        return names.size();
    }

    /** Matches a header; empty if a column is missing or in another unit, which is then noted. */
    static Optional<Header> match(TallyFile file, List<String> names, long line, FileProblems problems) {
        Map<ColumnRole, Integer> position = new EnumMap<>(ColumnRole.class);
        Map<ColumnRole, ColumnSpec> columns = new EnumMap<>(ColumnRole.class);
        file.columns().forEach((role, spec) -> {
            if (find(role, spec, names, line, problems)) {
                position.put(role, names.indexOf(spec.name()));
                withUnit(role, spec, problems).ifPresent(s -> columns.put(role, s));
            }
        });
        return columns.size() < file.columns().size()
                ? Optional.empty()
                : Optional.of(new Header(file.with(columns), position, List.copyOf(names)));
    }

    private static boolean find(
            ColumnRole role, ColumnSpec spec, List<String> names, long line, FileProblems problems) {
        int at = names.indexOf(spec.name());
        if (at < 0) {
            String hint = Nearest.to(spec.name(), names)
                    .map(n -> "did you mean \"" + n + "\"?")
                    .orElse("the header has " + String.join(", ", names));
            String detail = "no column \"" + spec.name() + "\" for " + role.key() + "; " + hint;
            problems.add(Rule.COLUMN_MISSING, line, spec.name(), "", detail);
        } else if (names.lastIndexOf(spec.name()) != at) {
            String detail = "the header has \"" + spec.name() + "\" twice";
            problems.add(Rule.COLUMN_MISSING, line, spec.name(), "", detail);
            return false;
        }
        return at >= 0;
    }

    /** The column with its unit: the design's, else the header's; empty if they contradict each other, which is then noted. */
    private static Optional<ColumnSpec> withUnit(ColumnRole role, ColumnSpec spec, FileProblems problems) {
        return switch (role.measure()) {
            case TEXT, NUMBER -> Optional.of(spec);
            case LENGTH ->
                HeaderUnits.length(spec.name())
                        .map(u -> new ColumnSpec(spec.name(), u, null, spec.entry()))
                        .or(() -> Optional.of(spec))
                        .flatMap(s -> settle(role, spec, s, problems));
            case ANGLE ->
                HeaderUnits.angle(spec.name())
                        .map(a -> new ColumnSpec(spec.name(), null, a, spec.entry()))
                        .or(() -> Optional.of(spec))
                        .flatMap(s -> settle(role, spec, s, problems));
        };
    }

    private static Optional<ColumnSpec> settle(
            ColumnRole role, ColumnSpec design, ColumnSpec header, FileProblems problems) {
        if (unit(design).isEmpty()) {
            problems.add(
                    Rule.FORMAT_DETECTED,
                    0,
                    design.name(),
                    unit(header),
                    "\"" + design.name() + "\" is read in " + unit(header) + ", as its header says");
            return Optional.of(header);
        }
        if (!unit(design).equals(unit(header))) {
            String detail = "the header says " + unit(header) + ", the design " + unit(design) + " for " + role.key();
            Policy policy = problems.add(Rule.FORMAT_CONTRADICTS, 0, design.name(), unit(header), detail);
            return policy == Policy.KEEP ? Optional.of(design) : Optional.empty();
        }
        return Optional.of(design);
    }

    private static String unit(ColumnSpec spec) {
        if (spec.scale() != null) {
            return spec.scale().id();
        }
        return spec.unit() == null ? "" : spec.unit().symbol();
    }
}
