package quadmean.design;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a design says of the work during and after the cruise.
 *
 * @param crews crews and their plots; none if the design does not say
 * @param audit a check cruise, if there is one
 * @param progress how a cruise under way is judged
 * @param remeasurement an earlier date of permanent plots, if there is one
 * @param instrument corrections of readings
 */
public record FollowUp(
        List<Crew> crews,
        Optional<AuditSettings> audit,
        ProgressSettings progress,
        Optional<RemeasurementSettings> remeasurement,
        InstrumentSettings instrument) {
    /** Nothing said. */
    public static final FollowUp NONE = new FollowUp(
            List.of(), Optional.empty(), ProgressSettings.USUAL, Optional.empty(), InstrumentSettings.NONE);

    public FollowUp {
        crews = List.copyOf(crews);
    }

    /** The crew that ran a plot; empty where the design does not say. */
    public Optional<String> crewOf(String plot) {
        return crews.stream()
                .filter(c -> c.plots().contains(plot))
                .map(Crew::name)
                .findFirst();
    }

    /** Tally files that the cruise itself does not read. */
    public List<TallyFile> tallies() {
        return Stream.concat(
                        audit.map(AuditSettings::tallies).stream(),
                        remeasurement.map(RemeasurementSettings::tallies).stream())
                .flatMap(List::stream)
                .toList();
    }
}
