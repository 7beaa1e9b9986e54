package quadmean.volume;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quadmean.model.FelledData;
import quadmean.model.FelledStem;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.model.StemFullness;
import quadmean.units.Unit;

/** Sums measured stems, and says which of them cannot be summed as asked. */
final class FelledSums {
    private final FelledData data;
    private final SectionSettings settings;
    private final Policy badRows;
    private final List<Problem> problems;
    private final List<SummedStem> used = new ArrayList<>();
    private long summed;
    private long unlikely;

    FelledSums(FelledData data, SectionSettings settings, Policy badRows) {
        this.data = data;
        this.settings = settings;
        this.badRows = badRows;
        this.problems = new ArrayList<>(data.problems());
    }

    FelledSections sum() {
        data.stems().forEach(this::take);
        if (StemFullness.isWrongUnit(unlikely, summed)) {
            problems.removeIf(p -> p.rule() == Rule.FELLED_UNLIKELY);
            problem(0, "", "", Rule.FELLED_UNLIKELY, Policy.REFUSE, StemFullness.wrongUnit(unlikely, summed));
        }
        String words = FelledSections.words(data, settings);
        return new FelledSections(
                settings,
                used,
                data.summed(words, used.stream().map(SummedStem::tree).toList(), account(), problems));
    }

    private void take(FelledStem stem) {
        if (!isCut(stem)) {
            leaveOut(stem);
            return;
        }
        SummedStem sum = SummedStem.of(stem, settings);
        summed++;
        StemFullness fullness = StemFullness.of(stem.dbhCm(), stem.heightM(), sum.wholeM3());
        if (fullness.isUnlikely()) {
            unlikely++;
            Policy policy = fullness.isNoStem() ? badRows : Policy.KEEP;
            String volume = Amounts.text(sum.wholeM3(), Unit.CUBIC_METRE, data.volumeUnit());
            problem(stem.row(), "volume", volume, Rule.FELLED_UNLIKELY, policy, fullness.words());
        }
        if (fullness.isNoStem()) {
            leaveOut(stem);
        } else if (sum.volume().volumeM3() > 0) {
            used.add(sum);
        } else {
            cut(stem, "top", top(), "the stem is no thicker at the stump");
            leaveOut(stem);
        }
    }

    /** Whether stump and top diameter lie on the stem; what does not is noted. */
    private boolean isCut(FelledStem stem) {
        int before = problems.size();
        if (settings.topCm() >= stem.dbhCm()) {
            String dbh = Amounts.text(stem.dbhCm(), Unit.CENTIMETRE, data.dbhUnit());
            cut(stem, "top", top(), "the top diameter is not below the dbh of tree " + stem.id() + ", " + dbh);
        }
        double lowest = stem.readings().get(0).heightM();
        String stump = Amounts.text(settings.stumpM(), Unit.METRE, data.heightUnit());
        if (settings.stumpM() < lowest) {
            String at = Amounts.text(lowest, Unit.METRE, data.heightUnit());
            cut(stem, "stump", stump, "the stump lies below the lowest point of tree " + stem.id() + ", " + at);
        }
        if (settings.stumpM() >= stem.heightM()) {
            String height = Amounts.text(stem.heightM(), Unit.METRE, data.heightUnit());
            cut(stem, "stump", stump, "the stump is not below the height of tree " + stem.id() + ", " + height);
        }
        return problems.size() == before;
    }

    private String top() {
        return Amounts.text(settings.topCm(), Unit.CENTIMETRE, data.dbhUnit());
    }

    private void leaveOut(FelledStem stem) {
        if (badRows == Policy.DROP) {
            Set<Long> rows = rows(stem);
            problems.removeIf(p -> p.policy() == Policy.KEEP && rows.contains(p.row()));
            problems.addAll(stem.leftOut(data.file(), "tree", stem.row()));
        }
    }

    private RowCount account() {
        Set<Long> rows = new HashSet<>();
        used.forEach(s -> rows.addAll(rows(s.stem())));
        long kept = problems.stream()
                .filter(p -> p.policy() == Policy.KEEP && rows.contains(p.row()))
                .map(Problem::row)
                .distinct()
                .count();
        return new RowCount(data.rows().in(), rows.size(), data.rows().in() - rows.size(), kept);
    }

    private static Set<Long> rows(FelledStem stem) {
        Set<Long> rows = new HashSet<>();
        stem.readings().forEach(r -> rows.add(r.row()));
        return rows;
    }

    private void cut(FelledStem stem, String option, String value, String detail) {
        problem(stem.row(), option, value, Rule.FELLED_CUT, badRows, detail);
    }

    private void problem(long row, String column, String value, Rule rule, Policy policy, String detail) {
        problems.add(new Problem(data.file(), row, column, value, rule, policy, detail));
    }
}
