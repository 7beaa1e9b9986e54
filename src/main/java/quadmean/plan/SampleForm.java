package quadmean.plan;

import java.util.List;
import java.util.function.Function;
import quadmean.stats.PlannedSample;

/**
 * A way to sample the stand, its size left open.
 *
 * @param kind its kind
 * @param name its name in sentences
 * @param partNames what its parts are called
 * @param fixedCost cost whatever the size
 * @param costs cost of a unit of each part
 * @param scope which targets it serves
 * @param sample the sample that it is for a target
 * @param notes what a reader should know of it, in sentences
 * @param remarks what a reader should know of a sample with so many units in its parts, in sentences
 */
@SuppressWarnings("ArrayRecordComponent") // plain numbers; never compared as a record
record SampleForm(
        SampleKind kind,
        String name,
        List<String> partNames,
        double fixedCost,
        double[] costs,
        Scope scope,
        Function<TargetOutlook, PlannedSample> sample,
        List<String> notes,
        Function<int[], List<String>> remarks) {
    /** A form whose size says all. */
    static List<String> none(int[] parts) {
        return List.of();
    }

    /** Which targets it serves. */
    enum Scope {
        ALL_TARGETS,
        /** What it takes is known for the target of the cruise alone. */
        FIRST_TARGET
    }
}
