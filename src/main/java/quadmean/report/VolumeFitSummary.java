package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.VolumeFit;
import quadmean.volume.VolumeFitGroup;
import quadmean.volume.VolumeFits;

/** Fitted volume equations as plain text, for the console. */
public final class VolumeFitSummary {
    private VolumeFitSummary() {}

    /** A block of lines for each group: the best form with its coefficients, then every form by its error. */
    public static List<String> of(VolumeFits fits) {
        UnitSystem units = fits.settings().units();
        List<String> lines = new ArrayList<>();
        lines.add("Read: " + String.join(", ", fits.data().columns()));
        if (!fits.data().volumes().isEmpty()) {
            lines.add("Volumes " + fits.data().volumes());
        }
        lines.add("Coefficients for D in " + units.diameter().symbol() + ", H in "
                + units.length().symbol() + ", V in " + units.volume().symbol());
        for (VolumeFitGroup group : fits.groups()) {
            lines.add("");
            lines.add(VolumeFitWords.name(group) + ", "
                    + Headline.count(group.trees().size(), "tree") + ", " + VolumeFitWords.range(group, units) + ":");
            VolumeFitWords.warnings(group).forEach(w -> lines.add("  ! " + w));
            group.best().ifPresent(b -> {
                lines.add("  best: " + b.form().formula() + ", "
                        + VolumeFitWords.coefficients(b).replace('\u00a0', ' '));
                lines.add("  influential trees: " + influential(b));
            });
            league(lines, group, units);
        }
        return lines;
    }

    private static String influential(VolumeFit fit) {
        List<String> ids =
                fit.influential().stream().map(i -> fit.trees().get(i).id()).toList();
        return ids.isEmpty() ? "none" : String.join(", ", ids);
    }

    private static void league(List<String> lines, VolumeFitGroup group, UnitSystem units) {
        lines.add(String.format(
                Locale.ROOT,
                "  %-18s %15s %8s %8s  %s",
                "form",
                "leave-1-out " + units.volume().symbol(),
                "in %",
                "bias %",
                "weights and status"));
        for (VolumeFit f : group.fits()) {
            String status = f.status().label() + (f.remark().isEmpty() ? "" : ": " + f.remark());
            lines.add(String.format(
                    Locale.ROOT,
                    "  %-18s %15s %8s %8s  %s",
                    f.form().id(),
                    number(Unit.CUBIC_METRE.convert(f.leaveOneOutM3(), units.volume()), 4),
                    number(f.leaveOneOutPercent(), 1),
                    number(f.biasPercent(), 2),
                    f.weights().id() + ", " + (group.isBest(f) ? "best" : status)));
        }
    }

    private static String number(double value, int decimals) {
        double shown = Math.abs(value) < 0.5 * Math.pow(10, -decimals) ? 0 : value;
        return Double.isFinite(value) ? String.format(Locale.ROOT, "%." + decimals + "f", shown) : "-";
    }
}
