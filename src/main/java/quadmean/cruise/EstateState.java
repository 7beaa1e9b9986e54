package quadmean.cruise;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import quadmean.cruise.EstatePart.PlotStart;
import quadmean.estimate.StandSums;
import quadmean.field.EstateFile;
import quadmean.field.EstatePosition;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.RowCount;
import quadmean.model.Rule;
import quadmean.units.Attribute;

/** What a run over an estate has added up so far, range by range in the order of the files. */
final class EstateState {
    private final int attributes;
    private final @Nullable StandSums[] sums;
    private final Map<String, Long> remarks = new TreeMap<>();
    private final Map<Attribute, TreeSet<String>> missing = new EnumMap<>(Attribute.class);
    private final Map<Rule, Map<Policy, Long>> found = new EnumMap<>(Rule.class);
    private PlotsSeen seen;
    private EstatePosition position = EstatePosition.START;
    private long used;
    private long dropped;
    private long kept;

    EstateState(int attributes, int stands) {
        this.attributes = attributes;
        this.sums = new StandSums[stands];
        this.seen = new PlotsSeen(stands);
    }

    /**
     * Adds the part that comes next.
     *
     * @param file its file
     * @return its problems, those of plots that were seen before too
     */
    List<Problem> add(EstatePart part, EstatePosition after, EstateFile file, List<String> stands) {
        used += part.rows().used();
        dropped += part.rows().dropped();
        kept += part.rows().kept();
        part.sums().forEach((stand, more) -> {
            StandSums before = sums[stand];
            if (before == null) {
                sums[stand] = more;
            } else {
                before.add(more);
            }
        });
        part.remarks().forEach((what, n) -> remarks.merge(what, n, Long::sum));
        part.missing()
                .forEach((attribute, why) ->
                        missing.computeIfAbsent(attribute, k -> new TreeSet<>()).addAll(why));
        List<Problem> problems = new ArrayList<>(part.rows().problems());
        problems.removeIf(p -> p.rule() == Rule.DBH_CLASS && found.containsKey(Rule.DBH_CLASS)); // said once
        for (PlotStart plot : part.plots()) {
            if (!seen.add(plot.stand(), plot.plot())) {
                problems.add(scattered(plot, file, stands.get(plot.stand())));
            }
        }
        problems.forEach(this::count);
        position = after;
        return problems;
    }

    /** Counts a problem. */
    void count(Problem problem) {
        found.computeIfAbsent(problem.rule(), r -> new EnumMap<>(Policy.class)).merge(problem.policy(), 1L, Long::sum);
    }

    private static Problem scattered(PlotStart plot, EstateFile file, String stand) {
        return new Problem(
                file.name(),
                plot.line(),
                file.plotColumn(),
                plot.plot(),
                Rule.PLOT_SCATTERED,
                Policy.REFUSE,
                "other rows of plot " + plot.plot() + " of stand " + stand
                        + " stand further up or in a file before, apart from these");
    }

    EstatePosition position() {
        return position;
    }

    /** The account of the rows so far. */
    RowCount rows() {
        return new RowCount(used + dropped, used, dropped, kept);
    }

    /** Sums by number of the stand; null where it has no plots. */
    List<@Nullable StandSums> sums() {
        return Arrays.asList(sums);
    }

    Map<String, Long> remarks() {
        return remarks;
    }

    /** For attributes that are not known of every tree, why. */
    Map<Attribute, String> missing() {
        Map<Attribute, String> why = new EnumMap<>(Attribute.class);
        missing.forEach((attribute, reasons) -> why.put(attribute, String.join("; ", reasons)));
        return why;
    }

    /** Number of problems by rule and policy. */
    Map<Rule, Map<Policy, Long>> found() {
        return found;
    }

    void write(DataOutput out) throws IOException {
        out.writeInt(position.file());
        out.writeLong(position.offset());
        out.writeLong(position.line());
        out.writeLong(used);
        out.writeLong(dropped);
        out.writeLong(kept);
        out.writeInt(remarks.size());
        for (Map.Entry<String, Long> remark : remarks.entrySet()) {
            out.writeUTF(remark.getKey());
            out.writeLong(remark.getValue());
        }
        out.writeInt(missing.size());
        for (Map.Entry<Attribute, TreeSet<String>> reasons : missing.entrySet()) {
            out.writeUTF(reasons.getKey().name());
            out.writeInt(reasons.getValue().size());
            for (String reason : reasons.getValue()) {
                out.writeUTF(reason);
            }
        }
        writeFound(out);
        for (StandSums stand : sums) {
            out.writeBoolean(stand != null);
            if (stand != null) {
                stand.write(out);
            }
        }
        seen.write(out);
    }

    private void writeFound(DataOutput out) throws IOException {
        out.writeInt(found.values().stream().mapToInt(Map::size).sum());
        for (Map.Entry<Rule, Map<Policy, Long>> rule : found.entrySet()) {
            for (Map.Entry<Policy, Long> policy : rule.getValue().entrySet()) {
                out.writeUTF(rule.getKey().name());
                out.writeUTF(policy.getKey().name());
                out.writeLong(policy.getValue());
            }
        }
    }

    static EstateState read(int attributes, int stands, DataInput in) throws IOException {
        EstateState state = new EstateState(attributes, stands);
        state.position = new EstatePosition(in.readInt(), in.readLong(), in.readLong());
        state.used = in.readLong();
        state.dropped = in.readLong();
        state.kept = in.readLong();
        for (int n = in.readInt(); n > 0; n--) {
            state.remarks.put(in.readUTF(), in.readLong());
        }
        for (int n = in.readInt(); n > 0; n--) {
            TreeSet<String> reasons = new TreeSet<>();
            state.missing.put(Attribute.valueOf(in.readUTF()), reasons);
            for (int k = in.readInt(); k > 0; k--) {
                reasons.add(in.readUTF());
            }
        }
        for (int n = in.readInt(); n > 0; n--) {
            Rule rule = Rule.valueOf(in.readUTF());
            Policy policy = Policy.valueOf(in.readUTF());
            state.found.computeIfAbsent(rule, r -> new EnumMap<>(Policy.class)).put(policy, in.readLong());
        }
        for (int s = 0; s < stands; s++) {
            state.sums[s] = in.readBoolean() ? StandSums.read(state.attributes, in) : null;
        }
        state.seen = PlotsSeen.read(stands, in);
        return state;
    }
}
