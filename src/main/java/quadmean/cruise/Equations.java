package quadmean.cruise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quadmean.design.Design;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.model.Tally;
import quadmean.model.Tree;
import quadmean.volume.EquationBook;

/** Whether each species of the tally has a volume equation. */
final class Equations {
    private Equations() {}

    /** The tally with a problem for each species that a design with equations has none for. */
    static Tally check(Design design, WoodBooks books, Tally tally) {
        EquationBook equations = books.volumes();
        if (equations.isEmpty()) {
            return tally;
        }
        Map<String, Tree> without = new TreeMap<>();
        tally.plots().stream()
                .flatMap(p -> p.trees().stream())
                .filter(t -> equations.find(t.species()).isEmpty())
                .forEach(t -> without.putIfAbsent(t.species(), t));
        List<Problem> problems = new ArrayList<>(tally.problems());
        without.forEach((species, first) -> problems.add(new Problem(
                design.file().getFileName().toString(),
                0,
                "volume",
                species,
                Rule.VOLUME_EQUATION_MISSING,
                Policy.REFUSE,
                "species " + species + " (first on line " + first.row() + " of " + first.file()
                        + ") has no volume equation")));
        return new Tally(tally.plots(), tally.rows(), problems, tally.listed());
    }
}
