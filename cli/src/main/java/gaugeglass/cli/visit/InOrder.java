package gaugeglass.cli.visit;

import java.util.ArrayDeque;
import java.util.Iterator;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.function.Predicate;

/** Work spread over threads whose results come out in the order of the tasks, with only a few of them held at once. */
public final class InOrder {
    /** Enough for no thread to wait while one task takes long; few enough to hold in a small heap. */
    private static final int HELD_PER_THREAD = 8;

    private InOrder() {}

    /**
     * Works off all tasks.
     *
     * @param tasks taken one by one on the calling thread
     * @param work done on any thread
     * @param take takes each result, on the calling thread; false ends the work early
     * @param threads how many to use; with one, all is done on the calling thread
     */
    public static <T, R> void run(Iterator<T> tasks, Function<T, R> work, Predicate<R> take, int threads) {
        if (threads <= 1) {
            while (tasks.hasNext()) {
                if (!take.test(work.apply(tasks.next()))) {
                    return;
                }
            }
            return;
        }
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            ArrayDeque<Future<R>> held = new ArrayDeque<>();
            boolean wanted = true;
            while (wanted && tasks.hasNext()) {
                T task = tasks.next();
                held.add(pool.submit(() -> work.apply(task)));
                if (held.size() >= threads * HELD_PER_THREAD) {
                    wanted = take.test(result(held.remove()));
                }
            }
            while (wanted && !held.isEmpty()) {
                wanted = take.test(result(held.remove()));
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private static <R> R result(Future<R> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while judging", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
