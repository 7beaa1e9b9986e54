package quadmean.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.design.Design;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Rule;
import quadmean.report.Content;

/**
 * The list of plots that {@code plan} writes and {@code estimate} reads. A design may name it before it is there; once it is, crews
 * may have walked it, and it is not replaced by another.
 */
final class PlotListFile {
    private static final String NAME = "plots.csv";

    private final Design design;
    private final Path target;

    /** @param folder where results go */
    PlotListFile(Design design, Path folder) {
        this.design = design;
        this.target = folder.resolve(NAME);
    }

    /** A problem if the new list would replace another one that the design names. */
    Optional<Problem> replaced(@Nullable Content plots) throws IOException {
        Path list = design.exceptions().plotList();
        if (list == null || plots == null || !isTarget(list) || Files.notExists(list) || isSame(list, plots)) {
            return Optional.empty();
        }
        return Optional.of(new Problem(
                String.valueOf(design.file().getFileName()),
                0,
                "selection.plot_list",
                list.toString(),
                Rule.DESIGN_VALUE,
                Policy.REFUSE,
                "the list of plots is there already and holds something else than this layout, and a crew may have walked it;"
                        + " move it away to lay out anew, or write to another folder with --out"));
    }

    /** A sentence on a list elsewhere, or on how to name the new one if the design names none. */
    Optional<String> compared(@Nullable Content plots) throws IOException {
        Path list = design.exceptions().plotList();
        if (plots == null || (list != null && isTarget(list))) {
            return Optional.empty();
        }
        if (list == null) {
            return Optional.of(
                    "To go on to the estimate of these plots, write into [selection] of the design: plot_list = \""
                            + fromDesign() + "\" (in place of any plots that it lists).");
        }
        if (Files.notExists(list)) {
            return Optional.of("The design's list of plots, " + list + ", is not there yet: copy " + target
                    + " to it once the layout is settled.");
        }
        return Optional.of(
                isSame(list, plots)
                        ? "The design's list of plots, " + list.getFileName() + ", is this layout."
                        : "The design's list of plots, " + list + ", holds something else than " + target
                                + ": estimates go by the list of the design.");
    }

    /** Files that must not be replaced: a list that would stay as it is may be written again. */
    List<Path> kept(List<Path> inputs) throws IOException {
        Path list = design.exceptions().plotList();
        return list == null || !isTarget(list)
                ? inputs
                : inputs.stream().filter(p -> !p.equals(list)).toList();
    }

    /** The new list as the design names it, with the slashes of design files. */
    private String fromDesign() {
        Path whole = target.toAbsolutePath().normalize();
        Path folder = design.file().toAbsolutePath().normalize().getParent();
        if (folder == null || !Objects.equals(folder.getRoot(), whole.getRoot())) {
            return whole.toString().replace('\\', '/');
        }
        return folder.relativize(whole).toString().replace('\\', '/');
    }

    private boolean isTarget(Path list) throws IOException {
        if (Files.exists(list) && Files.exists(target)) {
            return Files.isSameFile(list, target);
        }
        return list.toAbsolutePath().normalize().equals(target.toAbsolutePath().normalize());
    }

    private static boolean isSame(Path list, Content plots) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        plots.writeTo(out);
        return Arrays.equals(out.toByteArray(), Files.readAllBytes(list));
    }
}
