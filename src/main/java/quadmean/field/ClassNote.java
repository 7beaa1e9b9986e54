package quadmean.field;

import java.util.List;
import quadmean.design.ColumnRole;
import quadmean.design.ColumnSpec;
import quadmean.model.Rule;

/** States once for each tally that entries which are classes count at their midpoint. */
final class ClassNote {
    private final FileProblems problems;
    private boolean stated;

    ClassNote(FileProblems problems) {
        this.problems = problems;
    }

    void see(Row row) {
        if (stated) {
            return;
        }
        for (ColumnRole role : List.of(ColumnRole.DBH, ColumnRole.GIRTH)) {
            ColumnSpec spec = row.file().columns().get(role);
            if (spec != null && spec.entry() == ColumnSpec.Entry.MIDPOINT && Numbers.isClass(row.text(role))) {
                stated = true;
                String detail = "classes such as " + row.text(role) + " count at their midpoint; the basal area of a"
                        + " class is a little more than that of its midpoint";
                problems.add(Rule.DBH_CLASS, 0, spec.name(), row.text(role), detail);
            }
        }
    }
}
