package quadmean.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import quadmean.model.FelledTree;
import quadmean.stats.LinearFit;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.VolumeFit;
import quadmean.volume.VolumeFitGroup;
import quadmean.volume.VolumeFits;

/** Each tree with its volume by each form. */
final class VolumeFitCsv {
    private VolumeFitCsv() {}

    static Content of(VolumeFits fits) {
        UnitSystem units = fits.settings().units();
        String volume = units.volume().symbol();
        List<String> header = List.of(
                "group",
                "form",
                "tree",
                "row",
                "species",
                "dbh_" + units.diameter().symbol(),
                "height_" + units.length().symbol(),
                "observed_" + volume,
                "fitted_" + volume,
                "residual_" + volume,
                "predicted_without_the_tree_" + volume,
                "leverage",
                "cook",
                "influential");
        return Csv.of(
                header, fits.groups().stream().flatMap(g -> g.fits().stream().flatMap(f -> rows(g, f))));
    }

    private static Stream<List<String>> rows(VolumeFitGroup group, VolumeFit fit) {
        List<Integer> influential = fit.influential();
        return IntStream.range(0, fit.trees().size()).mapToObj(i -> row(group, fit, i, influential.contains(i)));
    }

    private static List<String> row(VolumeFitGroup group, VolumeFit fit, int i, boolean isInfluential) {
        FelledTree tree = fit.trees().get(i);
        LinearFit regression = fit.fit();
        UnitSystem units = fit.units();
        double observed = volume(tree.volumeM3(), units);
        double fitted = volume(fit.fitted()[i], units);
        List<String> row = new ArrayList<>(
                List.of(group.code(), fit.form().id(), tree.id(), Long.toString(tree.row()), tree.species()));
        row.add(Csv.number(Unit.CENTIMETRE.convert(tree.dbhCm(), units.diameter())));
        row.add(Csv.number(Unit.METRE.convert(tree.heightM(), units.length())));
        row.add(Csv.number(observed));
        row.add(Csv.number(fitted));
        row.add(Csv.number(observed - fitted));
        row.add(Csv.number(volume(fit.deleted()[i], units)));
        row.add(regression == null ? "" : Csv.number(regression.leverages()[i]));
        row.add(regression == null ? "" : Csv.number(regression.cook(i)));
        row.add(isInfluential ? "yes" : "no");
        return row;
    }

    private static double volume(double cubicMetres, UnitSystem units) {
        return Unit.CUBIC_METRE.convert(cubicMetres, units.volume());
    }
}
