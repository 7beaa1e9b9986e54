package quadmean.field;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.design.TallyFile;
import quadmean.model.Policy;
import quadmean.model.Problem;

/**
 * A copy of the tally to mend, so that the original stays as it was: recodes are carried out, and a last column says which
 * rules a row breaks.
 */
public final class WorkingCopy {
    private static final String PROBLEMS = "problems";

    private WorkingCopy() {}

    /**
     * The rows of each tally file, header first, by the name of the file.
     *
     * @param problems what was found in the tally
     * @throws IOException if a file cannot be read
     */
    public static Map<String, List<List<String>>> of(Design design, List<Problem> problems) throws IOException {
        Map<String, Set<String>> broken = new HashMap<>();
        problems.forEach(p -> broken.computeIfAbsent(p.file() + ":" + p.row(), k -> new LinkedHashSet<>())
                .add(p.rule().code() + " (" + p.policy().id() + ")"));
        Map<String, String> recodes = new HashMap<>();
        design.species().values().forEach(s -> s.recodeFrom().forEach(from -> recodes.put(from, s.code())));
        Map<String, List<List<String>>> copies = new LinkedHashMap<>();
        for (TallyFile file : design.tallies()) {
            FileProblems unheard = new FileProblems(rule -> Policy.KEEP, file.name(), p -> {});
            TallyRows.forEach(file, unheard, row -> {
                List<List<String>> copy = copies.computeIfAbsent(row.fileName(), k -> new ArrayList<>());
                if (copy.isEmpty()) {
                    copy.add(with(row.names(), PROBLEMS));
                }
                copy.add(with(
                        mended(row, recodes),
                        String.join("; ", broken.getOrDefault(row.fileName() + ":" + row.line(), Set.of()))));
            });
        }
        return copies;
    }

    private static List<String> mended(Row row, Map<String, String> recodes) {
        List<String> fields = new ArrayList<>(row.fields());
        Integer species = row.position().get(ColumnRole.SPECIES);
        if (species != null && recodes.containsKey(row.text(ColumnRole.SPECIES))) {
            fields.set(species, recodes.get(row.text(ColumnRole.SPECIES)));
        }
        while (fields.size() < row.names().size()) {
            fields.add("");
        }
        return fields;
    }

    private static List<String> with(List<String> fields, String last) {
        List<String> all = new ArrayList<>(fields);
        all.add(last);
        return all;
    }
}
