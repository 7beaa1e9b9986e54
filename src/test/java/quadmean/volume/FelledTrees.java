package quadmean.volume;

import static quadmean.support.ReferenceFiles.number;

import java.util.List;
import java.util.stream.IntStream;
import quadmean.model.FelledData;
import quadmean.model.FelledTree;
import quadmean.model.RowCount;
import quadmean.support.ReferenceFiles;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/** Felled trees of the reference files as the program holds them. */
final class FelledTrees {
    private FelledTrees() {}

    /** Black cherries or red oaks. */
    static List<FelledTree> of(String name) {
        var rows = ReferenceFiles.csv(name + ".csv");
        return IntStream.range(0, rows.size())
                .mapToObj(i -> tree(
                        i + 1,
                        number(rows.get(i), "dbh_in"),
                        number(rows.get(i), "height_ft"),
                        number(rows.get(i), "volume_ft3")))
                .toList();
    }

    /** A tree in inches, feet and cubic feet. */
    static FelledTree tree(int number, double dbh, double height, double volume) {
        return new FelledTree(
                Integer.toString(number),
                number + 1,
                "",
                Unit.INCH.convert(dbh, Unit.CENTIMETRE),
                Unit.FOOT.convert(height, Unit.METRE),
                Unit.CUBIC_FOOT.convert(volume, Unit.CUBIC_METRE));
    }

    static FelledData data(List<FelledTree> trees) {
        RowCount rows = new RowCount(trees.size(), trees.size(), 0, 0);
        return new FelledData(
                "t.csv", List.of(), Unit.INCH, Unit.FOOT, Unit.CUBIC_FOOT, "", List.of(), trees, rows, List.of());
    }

    static VolumeFit fit(VolumeFitForm form, VolumeFitWeights weights, UnitSystem units, List<FelledTree> trees) {
        return VolumeFitter.fit(form, trees, new VolumeFitSettings(List.of(form), weights, units));
    }
}
