package quadmean.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quadmean.design.TomlText;
import quadmean.model.Standing;
import quadmean.model.VolumeForm;
import quadmean.units.UnitSystem;
import quadmean.volume.VolumeFit;
import quadmean.volume.VolumeFitGroup;
import quadmean.volume.VolumeFits;

/** The best equation of each group as a piece of a design. */
final class VolumeFitToml {
    private VolumeFitToml() {}

    static Content of(VolumeFits fits) {
        return out -> out.write(text(fits).getBytes(StandardCharsets.UTF_8));
    }

    static String text(VolumeFits fits) {
        List<String> lines = new ArrayList<>();
        lines.add("# Paste into a design. A code must be a species or group of that design; \"*\" is all the rest.");
        for (VolumeFitGroup group : fits.groups()) {
            lines.add("");
            VolumeFitWords.warnings(group)
                    .forEach(w -> lines.add("# " + TomlText.comment(VolumeFitWords.name(group) + ": " + w) + "."));
            group.best().ifPresent(best -> equation(lines, fits, group, best));
        }
        return String.join("\n", lines) + "\n";
    }

    private static void equation(List<String> lines, VolumeFits fits, VolumeFitGroup group, VolumeFit best) {
        UnitSystem units = best.units();
        double[] coefficients = Objects.requireNonNull(best.fit()).coefficients();
        lines.add("[volume." + TomlText.quoted(group.code()) + "]");
        VolumeForm form = best.form().designForm();
        lines.add("form = " + TomlText.quoted(form.id()));
        for (int k = 0; k < form.coefficients().size(); k++) {
            lines.add(form.coefficients().get(k) + " = " + coefficients[k]);
        }
        if (form.isLogarithmic()) {
            lines.add("log_base = \"e\"");
            lines.add("residual_sd = " + best.sigma());
        }
        lines.add("dbh_unit = " + TomlText.quoted(units.diameter().symbol()));
        lines.add("height_unit = " + TomlText.quoted(units.length().symbol()));
        lines.add("volume_unit = " + TomlText.quoted(units.volume().symbol()));
        lines.addAll(VolumeFitWords.limits(group, units));
        lines.add("source = " + TomlText.quoted(VolumeFitWords.source(fits.data(), group, units)));
        lines.add("standing = " + TomlText.quoted(Standing.FITTED.label()));
    }
}
