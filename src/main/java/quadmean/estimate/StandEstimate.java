package quadmean.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quadmean.units.Attribute;
import quadmean.units.Basis;

/**
 * Everything estimated of a stand, in metric units.
 *
 * @param confidence confidence level of all limits, in (0, 1)
 * @param rows estimates by stratum, species, attribute and basis
 * @param running the target attribute as plots came in
 * @param structure the stand by diameter class, and what describes it as a whole
 * @param needed target and plots needed, the target attribute first
 * @param notes what a reader should know about the estimation, in sentences
 * @param alternatives what other variances make of the stand's estimates; empty where there are none
 * @param otherEstimates both estimates of 3P sampling, the one in use first; empty without it
 */
public record StandEstimate(
        double confidence,
        List<EstimateRow> rows,
        List<RunningMean> running,
        StandStructure structure,
        List<PlotsNeeded> needed,
        List<String> notes,
        List<OtherVariance> alternatives,
        List<OtherEstimate> otherEstimates) {
    public StandEstimate {
        alternatives = List.copyOf(alternatives);
        otherEstimates = List.copyOf(otherEstimates);
        rows = List.copyOf(rows);
        running = List.copyOf(running);
        needed = List.copyOf(needed);
        notes = List.copyOf(notes);
    }

    /** An estimate with one variance only. */
    public StandEstimate(
            double confidence,
            List<EstimateRow> rows,
            List<RunningMean> running,
            StandStructure structure,
            List<PlotsNeeded> needed,
            List<String> notes) {
        this(confidence, rows, running, structure, needed, notes, List.of(), List.of());
    }

    /** The same estimate with further notes. */
    public StandEstimate withNotes(List<String> further) {
        List<String> all = new ArrayList<>(notes);
        all.addAll(further);
        return new StandEstimate(confidence, rows, running, structure, needed, all, alternatives, otherEstimates);
    }

    /** The rows of whole trees, or of all logs together. */
    public List<EstimateRow> wholeRows() {
        return rows.stream().filter(r -> r.part().equals(Part.ALL)).toList();
    }

    /** One row of whole trees, or of all logs together, if it is there. */
    public Optional<EstimateRow> row(String stratum, String species, Attribute attribute, Basis basis) {
        return row(stratum, species, Part.ALL, attribute, basis);
    }

    /** One row, if it is there. */
    public Optional<EstimateRow> row(String stratum, String species, Part part, Attribute attribute, Basis basis) {
        return rows.stream()
                .filter(r -> r.stratum().equals(stratum)
                        && r.species().equals(species)
                        && r.part().equals(part)
                        && r.attribute() == attribute
                        && r.basis() == basis)
                .findFirst();
    }
}
