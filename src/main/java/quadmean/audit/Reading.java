package quadmean.audit;

import java.util.Optional;
import java.util.OptionalDouble;
import quadmean.design.Tolerances;
import quadmean.design.Tolerances.Limit;
import quadmean.model.FieldHeight;
import quadmean.model.Tree;

/** What a check cruise compares tree by tree. */
public enum Reading {
    /** In centimetres. */
    DBH("dbh", "dbh"),
    /** In metres, where both took one. */
    HEIGHT("height", "height"),
    /** In percentage points, where one of them found any. */
    DEFECT("defect", "defect");

    private final String id;
    private final String label;

    Reading(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The name used in JSON and CSV. */
    public String id() {
        return id;
    }

    /** The name used in sentences. */
    public String label() {
        return label;
    }

    /** The limit that a design has for it. */
    public Optional<Limit> limit(Tolerances tolerances) {
        return switch (this) {
            case DBH -> tolerances.dbh();
            case HEIGHT -> tolerances.height();
            case DEFECT -> tolerances.defect();
        };
    }

    /** The reading of a tree; empty where none was taken. */
    public OptionalDouble of(Tree tree) {
        return switch (this) {
            case DBH -> OptionalDouble.of(tree.dbhCm());
            case HEIGHT -> height(tree.height());
            case DEFECT -> OptionalDouble.of(100 * tree.detail().defect());
        };
    }

    /** Whether a pair has the reading on both sides, so that it can be compared. */
    boolean isIn(TreeMatch match) {
        return match.isPair()
                && of(match.crewTree()).isPresent()
                && of(match.checkTree()).isPresent()
                && (this != DEFECT
                        || match.crewTree().detail().defect() > 0
                        || match.checkTree().detail().defect() > 0);
    }

    /** The crew's reading of a pair. */
    double cruised(TreeMatch match) {
        return of(match.crewTree()).orElse(Double.NaN);
    }

    /** The checker's. */
    double checked(TreeMatch match) {
        return of(match.checkTree()).orElse(Double.NaN);
    }

    /** Crew less checker: above 0 where the crew reads high. */
    public double difference(TreeMatch match) {
        return cruised(match) - checked(match);
    }

    private static OptionalDouble height(@org.jspecify.annotations.Nullable FieldHeight height) {
        return height == null ? OptionalDouble.empty() : OptionalDouble.of(height.metres());
    }
}
