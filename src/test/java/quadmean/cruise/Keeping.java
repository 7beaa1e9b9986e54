package quadmean.cruise;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInput;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quadmean.model.Problem;

/** Keeps problems, and the state after some parts, in memory. */
final class Keeping implements EstateKeeping {
    final List<Problem> problems = new ArrayList<>();
    byte @Nullable [] state;
    private final int stateAfter;
    private int parts;
    /** Whether the run ends at the first part after the state. */
    boolean isCutOff;

    /** Keeps a state after so many parts; never for 0. */
    Keeping(int stateAfter) {
        this.stateAfter = stateAfter;
    }

    @Override
    public void problems(List<Problem> more) {
        problems.addAll(more);
    }

    @Override
    public void keep(long rows, Writer writer) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writer.write(new DataOutputStream(out));
        state = out.toByteArray();
    }

    @Override
    public Optional<DataInput> kept() {
        byte[] kept = state;
        return kept == null ? Optional.empty() : Optional.of(new DataInputStream(new ByteArrayInputStream(kept)));
    }

    /** Ends a run as a power cut does. */
    static final class CutOff extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    @Override
    public boolean isDue() {
        if (isCutOff && state != null) {
            throw new CutOff();
        }
        parts++;
        return parts == stateAfter;
    }
}
