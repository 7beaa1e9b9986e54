package quadmean.cruise;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import quadmean.field.EstateFile;
import quadmean.field.EstatePosition;
import quadmean.field.EstateRange;
import quadmean.field.EstateRanges;

/**
 * One pass over the files of an estate by several threads: ranges are worked on side by side and come out in the order of the files.
 *
 * @param <W> who works on a range; each works on one at a time
 * @param <R> what comes of a range
 */
final class EstatePass<W, R> {
    private final List<EstateFile> files;
    private final int threads;
    private final int rangeBytes;
    private final Predicate<String> isStand;
    private final Supplier<W> workers;
    private final Work<W, R> work;

    EstatePass(
            List<EstateFile> files,
            int threads,
            int rangeBytes,
            Predicate<String> isStand,
            Supplier<W> workers,
            Work<W, R> work) {
        this.isStand = isStand;
        this.files = files;
        this.threads = threads;
        this.rangeBytes = rangeBytes;
        this.workers = workers;
        this.work = work;
    }

    /** What is done with a range. */
    @FunctionalInterface
    interface Work<W, R> {
        R of(W worker, EstateRange range);
    }

    /** Takes what comes of a range. */
    @FunctionalInterface
    interface Taker<R> {
        void take(R result, EstateRange range, long bytesRead) throws IOException;
    }

    private record Underway<R>(EstateRange range, Future<R> result) {}

    /**
     * Makes the pass.
     *
     * @param from where to start
     * @param taker takes all results, one after the other, in this thread
     * @throws IOException if a file cannot be read, or the taker cannot write
     */
    void run(EstatePosition from, Taker<R> taker) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        BlockingQueue<W> idle = new ArrayBlockingQueue<>(threads);
        for (int i = 0; i < threads; i++) {
            idle.add(workers.get());
        }
        Function<EstateRange, Future<R>> start = range -> pool.submit(() -> {
            W worker = idle.take();
            try {
                return work.of(worker, range);
            } finally {
                idle.add(worker);
            }
        });
        try (EstateRanges ranges = EstateRanges.of(files, from, rangeBytes, isStand)) {
            Deque<Underway<R>> underway = new ArrayDeque<>();
            int most = mostUnderway();
            EstateRange next = ranges.next();
            while (next != null || !underway.isEmpty()) {
                if (next != null && underway.size() < most) {
                    underway.add(new Underway<>(next, start.apply(next)));
                    next = ranges.next();
                } else {
                    Underway<R> first = underway.remove();
                    taker.take(result(first.result()), first.range(), ranges.bytesRead());
                    ranges.giveBack(first.range());
                }
            }
        } finally {
            pool.shutdownNow();
        }
    }

    /** Two more than threads, so that none waits; fewer where their bytes would take a quarter of the memory. */
    private int mostUnderway() {
        long room = Runtime.getRuntime().maxMemory() / 4 / rangeBytes;
        return (int) Math.max(1, Math.min(threads + 2L, room));
    }

    private static <R> R result(Future<R> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        }
    }
}
