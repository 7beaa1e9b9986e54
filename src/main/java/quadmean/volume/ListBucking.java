package quadmean.volume;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quadmean.volume.StemCuts.Choice;
import quadmean.volume.StemCuts.Fit;

/** From the stump up, each log the first product and length that fits, until none does. */
final class ListBucking {
    private ListBucking() {}

    static List<CutLog> logs(StemCuts cuts) {
        List<CutLog> logs = new ArrayList<>();
        long place = 0;
        Optional<Choice> next = first(cuts, place);
        while (next.isPresent()) {
            logs.add(cuts.log(next.get(), place, logs.size() + 1));
            place += next.get().uses();
            next = first(cuts, place);
        }
        return logs;
    }

    private static Optional<Choice> first(StemCuts cuts, long place) {
        return cuts.choices().stream()
                .filter(c -> cuts.fit(c, place) == Fit.FITS)
                .findFirst();
    }
}
