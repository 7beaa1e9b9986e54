package quadmean.volume;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import quadmean.model.CubicRule;
import quadmean.model.Scaling;
import quadmean.units.Unit;

/** Logs measured by a log rule under a scaling convention, and by a cubic formula. */
public final class LogScale implements LogMeasure {
    private final Scaling scaling;
    private final CubicRule cubic;
    private final BoardFootRule rule;
    private final Pieces cutter;

    private LogScale(Scaling scaling, CubicRule cubic) {
        this.scaling = scaling;
        this.cubic = cubic;
        this.rule = BoardFootRule.of(scaling.rule());
        this.cutter = Pieces.of(scaling);
    }

    /**
     * A scale.
     *
     * @throws IllegalArgumentException if the longest piece is shorter than the step of lengths
     */
    public static LogScale of(Scaling scaling, CubicRule cubic) {
        return new LogScale(scaling, cubic);
    }

    /**
     * {@inheritDoc} Diameters and length are used as they are, unrounded.
     *
     * @throws IllegalArgumentException unless all sizes are above zero and finite
     */
    @Override
    public double cubicMetres(double largeEndCm, double middleCm, double smallEndCm, double lengthM) {
        return CubicVolume.ofDiameters(cubic, largeEndCm, middleCm, smallEndCm, lengthM);
    }

    /**
     * {@inheritDoc}
     *
     * @throws IllegalArgumentException unless all sizes are above zero and finite
     */
    @Override
    public double boardFeet(double smallEndCm, double largeEndCm, double lengthM) {
        return scale(smallEndCm, largeEndCm, lengthM).boardFeet();
    }

    /**
     * A log as it is scaled, piece by piece, with what the log rule has no figure for.
     *
     * @param smallEndCm diameter inside bark at the small end (cm)
     * @param largeEndCm diameter inside bark at the large end (cm)
     * @param lengthM length without trim (m)
     * @throws IllegalArgumentException unless all sizes are above zero and finite, and the length under 1 000 ft
     */
    public ScaledLog scale(double smallEndCm, double largeEndCm, double lengthM) {
        double small = inches(smallEndCm, "small-end diameter (cm)");
        double large = inches(largeEndCm, "large-end diameter (cm)");
        double length = Sizes.logFeet(Unit.METRE.convert(Sizes.positive(lengthM, "length (m)"), Unit.FOOT));
        List<ScaledPiece> fromTop = new ArrayList<>();
        double joint = 0;
        for (double feet : cutter.fromTop(length)) {
            fromTop.add(piece(small + (large - small) * joint / length, feet));
            joint += feet;
        }
        Collections.reverse(fromTop);
        return new ScaledLog(fromTop);
    }

    /** The conventions in words, one sentence or two each. */
    public List<String> statement() {
        return ScaleWords.of(scaling, cubic, rule);
    }

    private ScaledPiece piece(double asIs, double feet) {
        double inches = switch (scaling.diameters()) {
            case NEAREST_INCH -> Steps.nearest(asIs, 1);
            case INCH_DOWN -> Steps.down(asIs, 1);
            case AS_IS -> asIs;
        };
        RuleFigure figure = rule.figure(inches, feet, scaling.figures());
        return new ScaledPiece(inches, feet, figure.boardFeet(), figure.coverage(), figure.standing());
    }

    private static double inches(double cm, String name) {
        return Unit.CENTIMETRE.convert(Sizes.positive(cm, name), Unit.INCH);
    }
}
