package quadmean.simulate;

import java.util.SplittableRandom;
import quadmean.design.Design;
import quadmean.design.SimulationSettings.Prediction;
import quadmean.model.MappedTree;
import quadmean.units.BasalArea;
import quadmean.units.Unit;

/** What a cruiser foretells of a tree in 3P sampling: a measure of its size, in the units of the design, times an error of mean one. */
final class Predictions {
    private final Design design;
    private final double perSquareMetre;

    Predictions(Design design) {
        this.design = design;
        double length = Unit.METRE.convert(1, design.units().length());
        this.perSquareMetre = length * length;
    }

    double of(MappedTree tree, SplittableRandom random) {
        return size(tree) * Auxiliary.error(design.simulation().predictionErrorPercent(), random);
    }

    private double size(MappedTree tree) {
        Prediction prediction = design.simulation().prediction();
        return switch (prediction) {
            case DBH -> Unit.CENTIMETRE.convert(tree.dbhCm(), design.units().diameter());
            case BASAL_AREA -> perSquareMetre * BasalArea.ofTree(tree.dbhCm());
            case DBH_SQUARED_HEIGHT ->
                perSquareMetre
                        * Math.pow(Unit.CENTIMETRE.convert(tree.dbhCm(), Unit.METRE), 2)
                        * Unit.METRE.convert(tree.heightM(), design.units().length());
        };
    }
}
