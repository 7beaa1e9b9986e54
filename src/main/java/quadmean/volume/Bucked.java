package quadmean.volume;

import java.util.List;
import java.util.Optional;

/**
 * What cutting a stem into logs came to.
 *
 * @param logs the logs, butt log first
 * @param reason why there are none; empty if there are some
 */
public record Bucked(List<CutLog> logs, Optional<NoLogs> reason) {
    public Bucked {
        logs = List.copyOf(logs);
        if (logs.isEmpty() != reason.isPresent()) {
            throw new IllegalArgumentException("a stem has logs or a reason for none, got " + logs + " " + reason);
        }
    }

    /** A stem cut into logs. */
    static Bucked into(List<CutLog> logs) {
        return new Bucked(logs, Optional.empty());
    }

    /** A stem without logs. */
    public static Bucked none(NoLogs reason) {
        return new Bucked(List.of(), Optional.of(reason));
    }
}
