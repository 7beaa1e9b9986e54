package quadmean.cruise;

import java.io.DataInput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import quadmean.design.ColumnRole;
import quadmean.design.Design;
import quadmean.design.EstateSettings;
import quadmean.estimate.EstateEstimator;
import quadmean.field.BrokenTallyException;
import quadmean.field.CurveFile;
import quadmean.field.EstateFile;
import quadmean.field.EstateFiles;
import quadmean.field.EstatePosition;
import quadmean.field.EstateRanges;
import quadmean.field.EstateRows;
import quadmean.field.EstateTable;
import quadmean.field.RangeReader;
import quadmean.height.FillingCurves;
import quadmean.model.EstateStand;
import quadmean.model.FillingCurve;
import quadmean.model.Policy;
import quadmean.model.Problem;
import quadmean.model.Progress;

/** The whole line from the tally of an estate to its estimate, in one pass over the rows; two where curves are fitted. */
public final class Estate {
    /** Readings known again by their text, all threads together. */
    private static final int MEMORY = 1 << 18;

    private static final int LEAST_MEMORY = 1 << 13;

    private final Design design;
    private final EstateSettings settings;
    private final int threads;
    private final int rangeBytes;
    private final EstateKeeping keeping;
    private final Progress progress;

    private Estate(
            Design design,
            EstateSettings settings,
            int threads,
            int rangeBytes,
            EstateKeeping keeping,
            Progress progress) {
        this.design = design;
        this.settings = settings;
        this.threads = threads;
        this.rangeBytes = rangeBytes;
        this.keeping = keeping;
        this.progress = progress;
    }

    /**
     * Works an estate through.
     *
     * @param design a design of an estate
     * @param threads threads to read with, 1 or more; results do not depend on it
     * @param keeping where problems go, and what an interrupted run kept
     * @param progress told of long work
     * @return empty if the input is refused; the problems say why
     * @throws IOException if a file is missing or cannot be read, or what is kept cannot be written
     */
    public static Optional<EstateResult> run(Design design, int threads, EstateKeeping keeping, Progress progress)
            throws IOException {
        return run(design, threads, EstateRanges.USUAL_BYTES, keeping, progress);
    }

    /** The same by ranges of so many bytes, about. */
    static Optional<EstateResult> run(
            Design design, int threads, int rangeBytes, EstateKeeping keeping, Progress progress) throws IOException {
        EstateSettings settings = design.estate().orElseThrow();
        return new Estate(design, settings, threads, rangeBytes, keeping, progress).run();
    }

    private Optional<EstateResult> run() throws IOException {
        List<Problem> problems = new ArrayList<>();
        EstateJob job = new EstateJob(design, EstateTable.read(design, settings, problems::add));
        List<EstateFile> files = EstateFiles.open(design, problems::add);
        Map<String, List<FillingCurve>> given = settings.curves().isPresent()
                ? CurveFile.read(design, settings.curves().get(), FillingCurves::parametersOf, problems::add)
                : Map.of();
        if (problems.stream().anyMatch(p -> p.policy() == Policy.REFUSE)) {
            keeping.kept(); // of no use here, and begins the list of problems anew
            return refused(problems);
        }
        try {
            return work(job, files, given, problems);
        } catch (BrokenTallyException e) {
            return refused(List.of(e.problem()));
        }
    }

    /** Refuses for what stops all reading. */
    private Optional<EstateResult> refused(List<Problem> problems) throws IOException {
        EstateState none = new EstateState(0, 0);
        problems.forEach(none::count);
        keeping.problems(problems);
        keeping.account(new EstateAccount(none.rows(), none.found()));
        return Optional.empty();
    }

    private Optional<EstateResult> work(
            EstateJob job, List<EstateFile> files, Map<String, List<FillingCurve>> given, List<Problem> problems)
            throws IOException {
        Optional<DataInput> kept = keeping.kept();
        List<FillingCurves> curves;
        EstateState state;
        if (kept.isPresent()) {
            curves = EstateCurves.byRegion(job, KeptCurves.read(kept.get()));
            state = EstateState.read(job.attributes(), job.stands().size(), kept.get());
        } else {
            curves = settings.curves().isPresent() ? EstateCurves.byRegion(job, given) : fit(job, files);
            state = new EstateState(job.attributes(), job.stands().size());
            problems.forEach(state::count);
            keeping.problems(problems);
        }
        try {
            addUp(job, files, curves, state);
        } catch (BrokenTallyException e) {
            state.count(e.problem());
            keeping.problems(List.of(e.problem()));
        }
        List<Problem> ofStands = new EstateStandChecks(design, settings, job.stands(), state.sums()).problems();
        ofStands.forEach(state::count);
        keeping.problems(ofStands);
        keeping.account(new EstateAccount(state.rows(), state.found()));
        boolean isRefused = state.found().values().stream().anyMatch(m -> m.containsKey(Policy.REFUSE));
        return isRefused ? Optional.empty() : Optional.of(result(job, files, curves, state));
    }

    private List<FillingCurves> fit(EstateJob job, List<EstateFile> files) throws IOException {
        if (!hasHeights()) {
            return EstateCurves.byRegion(job, Map.of());
        }
        ConcurrentLinkedQueue<HeightDrawer> drawers = new ConcurrentLinkedQueue<>();
        EstatePass<RangeReader, EstateRows> pass = new EstatePass<>(
                files,
                threads,
                rangeBytes,
                code -> job.stand(code) >= 0,
                () -> {
                    HeightDrawer drawer =
                            new HeightDrawer(job, new HeightDraw(design.seed(), settings.heightsPerCurve()));
                    drawers.add(drawer);
                    return new RangeReader(design, drawer, memory());
                },
                RangeReader::read);
        Bytes bytes = new Bytes(files);
        long[] rows = {0};
        pass.run(EstatePosition.START, (read, range, done) -> {
            rows[0] += read.used() + read.dropped();
            progress.rows(Progress.Work.HEIGHTS, rows[0], bytes.share(done));
        });
        HeightDraw all = new HeightDraw(design.seed(), settings.heightsPerCurve());
        drawers.forEach(d -> all.offer(d.draw()));
        return EstateCurves.fit(job, all);
    }

    private boolean hasHeights() {
        return design.tallies().stream()
                .anyMatch(t -> t.columns().containsKey(ColumnRole.HEIGHT)
                        || t.columns().containsKey(ColumnRole.TOP));
    }

    private int memory() {
        return Math.max(LEAST_MEMORY, MEMORY / threads);
    }

    /** Who adds up in a thread. */
    private record Adder(PlotAdder plots, RangeReader reader) {}

    private void addUp(EstateJob job, List<EstateFile> files, List<FillingCurves> curves, EstateState state)
            throws IOException {
        List<String> stands = job.stands().stream().map(EstateStand::code).toList();
        EstatePass<Adder, EstatePart> pass = new EstatePass<>(
                files,
                threads,
                rangeBytes,
                code -> job.stand(code) >= 0,
                () -> {
                    PlotAdder plots = new PlotAdder(job, curves);
                    return new Adder(plots, new RangeReader(design, plots, memory()));
                },
                (adder, range) -> adder.plots().take(adder.reader().read(range)));
        Bytes bytes = new Bytes(files);
        pass.run(state.position(), (part, range, done) -> {
            List<Problem> problems = state.add(part, range.after(), range.file(), stands);
            if (!problems.isEmpty()) {
                keeping.problems(problems);
            }
            progress.rows(Progress.Work.ROWS, state.rows().in(), bytes.share(done));
            if (keeping.isDue()) {
                keeping.keep(state.rows().in(), out -> {
                    KeptCurves.write(job.regions(), curves, out);
                    state.write(out);
                });
            }
        });
    }

    /** Bytes of all files together, of which a share is read. */
    private record Bytes(long all) {
        Bytes(List<EstateFile> files) throws IOException {
            this(sum(files));
        }

        private static long sum(List<EstateFile> files) throws IOException {
            long all = 0;
            for (EstateFile file : files) {
                all += file.size();
            }
            return all;
        }

        double share(long read) {
            return all == 0 ? 1 : Math.min(1, (double) read / all);
        }
    }

    private EstateResult result(EstateJob job, List<EstateFile> files, List<FillingCurves> curves, EstateState state) {
        EstateEstimator estimator = new EstateEstimator(
                job.stands(), state.sums(), Cruise.settings(design, state.missing()), settings.onePlot());
        Map<String, FillingCurves> byRegion = new LinkedHashMap<>();
        for (int i = 0; i < curves.size(); i++) {
            byRegion.put(job.regions().get(i), curves.get(i));
        }
        return new EstateResult(
                design,
                files.stream().map(EstateFile::name).toList(),
                state.rows(),
                state.found(),
                byRegion,
                origin(),
                estimator,
                estimator.estate(),
                notes(state));
    }

    private EstateResult.CurveOrigin origin() {
        if (settings.curves().isPresent()) {
            return EstateResult.CurveOrigin.GIVEN;
        }
        return hasHeights() ? EstateResult.CurveOrigin.FITTED : EstateResult.CurveOrigin.NONE;
    }

    private static List<String> notes(EstateState state) {
        List<String> notes = new ArrayList<>();
        state.remarks()
                .forEach((what, n) ->
                        notes.add(String.format(Locale.ROOT, "%,d %s %s.", n, n == 1 ? "tree" : "trees", what)));
        return notes;
    }
}
