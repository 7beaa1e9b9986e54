package quadmean.design;

import java.util.List;
import java.util.Optional;
import quadmean.model.EquationSpec;
import quadmean.model.Rule;

/** Reads {@code library = "NAME"}: an equation of the library, in place of all that a table would state. */
final class LibraryChoice {
    private LibraryChoice() {}

    /**
     * The equation named; empty if there is none of this kind, which is noted.
     *
     * @param kind kind of equation that the table takes
     * @param beside keys that may stand beside the name
     */
    static <T extends EquationSpec> Optional<T> read(Section s, Class<T> kind, String... beside) {
        String name = s.requiredText("library");
        s.knows(beside);
        for (String key : s.keys()) {
            if (!key.equals("library") && !List.of(beside).contains(key)) {
                s.knows(key);
                String detail = s.path() + "." + key + " stands beside library, which states it already: take one of"
                        + " the two out";
                s.problem(Rule.DESIGN_VALUE, key, "", detail);
            }
        }
        if (name.isBlank()) {
            return Optional.empty(); // noted already
        }
        Optional<EquationSpec> found = EquationLibrary.shipped().find(name).map(EquationLibrary.Entry::equation);
        if (found.isEmpty()) {
            List<String> near = EquationLibrary.shipped().near(name, kind);
            String detail = "the library has no equation \"" + name + "\""
                    + (near.isEmpty() ? "" : "; near it: " + String.join(", ", near))
                    + "; quadmean equations lists all";
            s.problem(Rule.DESIGN_VALUE, "library", name, detail);
        } else if (!kind.isInstance(found.get())) {
            String detail = "the equation " + name + " gives "
                    + (kind == quadmean.model.VolumeSpec.class ? "biomass, not volume" : "volume, not biomass")
                    + "; quadmean equations lists what there is";
            s.problem(Rule.DESIGN_VALUE, "library", name, detail);
        }
        return found.filter(kind::isInstance).map(kind::cast);
    }
}
