package quadmean.height;

import static quadmean.support.ReferenceFiles.number;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import quadmean.model.CurveForm;
import quadmean.model.FieldHeight;
import quadmean.model.HeightSource;
import quadmean.model.Tree;
import quadmean.support.ReferenceFiles;
import quadmean.units.UnitSystem;

/** Heights for the tests of this room: of the Idaho stand, of the Finnish pines, and made up from a seed. */
final class Heights {
    static final double BREAST_HEIGHT_M = 1.3;

    /** Heights that a species needs for a curve of its own, in these tests. */
    static final int MIN_HEIGHTS = 6;

    static final HeightSettings METRIC =
            new HeightSettings(UnitSystem.METRIC, BREAST_HEIGHT_M, Map.of(), MIN_HEIGHTS, 5);

    private Heights() {}

    /** Diameters (cm) and heights (m). */
    @SuppressWarnings("ArrayRecordComponent")
    record Sample(double[] d, double[] h) {}

    /** idaho-heights.csv, one species. */
    static Sample idaho(String species) {
        var rows = ReferenceFiles.csv("idaho-heights.csv").stream()
                .filter(r -> r.getField("species").equals(species))
                .toList();
        return new Sample(
                rows.stream().mapToDouble(r -> number(r, "dbh_cm")).toArray(),
                rows.stream().mapToDouble(r -> number(r, "height_m")).toArray());
    }

    /** finpines.csv: those above breast height that have a diameter. */
    static Sample finpines() {
        var rows = ReferenceFiles.csv("finpines.csv").stream()
                .filter(r -> number(r, "height_m") > BREAST_HEIGHT_M && number(r, "dbh_cm") > 0)
                .toList();
        return new Sample(
                rows.stream().mapToDouble(r -> number(r, "dbh_cm")).toArray(),
                rows.stream().mapToDouble(r -> number(r, "height_m")).toArray());
    }

    /** redoak.csv, in inches and feet. */
    static Sample redOaks() {
        var rows = ReferenceFiles.csv("redoak.csv");
        return new Sample(
                rows.stream().mapToDouble(r -> number(r, "dbh_in")).toArray(),
                rows.stream().mapToDouble(r -> number(r, "height_ft")).toArray());
    }

    /** Points of a curve at diameters drawn between 5 and 60, with normal errors of this standard deviation. */
    static Sample generated(CurveForm form, double[] parameters, double breastHeight, int n, double sd, long seed) {
        Random random = new Random(seed);
        double[] d = random.doubles(n).map(u -> 5 + 55 * u).toArray();
        double[] h = Arrays.stream(d)
                .map(x -> breastHeight + CurveModel.of(form).value(x, parameters) + sd * random.nextGaussian())
                .toArray();
        return new Sample(d, h);
    }

    /** Trees of one species with measured heights, numbered from 1. */
    static List<Tree> trees(String species, Sample sample) {
        List<Tree> trees = new ArrayList<>();
        for (int i = 0; i < sample.d().length; i++) {
            trees.add(tree(species, i + 1, sample.d()[i], sample.h()[i]));
        }
        return trees;
    }

    /** A tree; NaN for one without a height. */
    static Tree tree(String species, int number, double dbhCm, double heightM) {
        FieldHeight height = Double.isNaN(heightM)
                ? null
                : new FieldHeight(heightM, HeightSource.MEASURED, "height", Double.toString(heightM));
        return new Tree("tally.csv", number + 1L, "1", Integer.toString(number), species, dbhCm, height);
    }
}
