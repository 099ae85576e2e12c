package gaugeglass.cli.bench;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.observation.Inspection;
import gaugeglass.engine.observation.InspectionReader;
import gaugeglass.engine.reading.SourceText;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntUnaryOperator;

/**
 * Measures a warm rulebook over many inspections, on one thread and on two: judged only, and read and judged.
 *
 * <p>Given files are taken in turn. Printed are inspections a second, microseconds for each one on its thread by the clock
 * and by the processor, and the heap that is in use after a collection, before and after: it must not grow with the number of inspections.
 */
public final class Throughput {
    /** Processor time of the threads that worked; where others use the machine too, the clock tells of them as well. */
    private static final AtomicLong CPU = new AtomicLong();

    private Throughput() {}

    /**
     * Measures and prints a table.
     *
     * @param args how many inspections, then files of inspections, at least one
     * @throws InterruptedException when interrupted
     * @throws ExecutionException when judging fails
     */
    public static void main(String[] args) throws InterruptedException, ExecutionException {
        int inspections = Integer.parseInt(args[0]);
        List<String> files = Arrays.asList(args).subList(1, args.length);
        Rulebook rulebook = Rulebook.load(Throughput.class.getClassLoader());
        InspectionReader reader = new InspectionReader(rulebook.vocabulary());
        List<String> texts = new ArrayList<>();
        List<Inspection> read = new ArrayList<>();
        for (String file : files) {
            String text = SourceText.read(Path.of(file));
            texts.add(text);
            read.add(reader.read(file, text));
        }
        IntUnaryOperator judged = i -> judge(rulebook, read.get(i % read.size()));
        IntUnaryOperator readAndJudged =
                i -> judge(rulebook, reader.read(files.get(i % files.size()), texts.get(i % texts.size())));

        System.out.printf(
                "%,d inspections, %d file(s) in turn; %s %s, %d cores%n",
                inspections,
                files.size(),
                System.getProperty("java.vm.name"),
                Runtime.version(),
                Runtime.getRuntime().availableProcessors());
        System.out.printf(
                "%-18s %8s %10s %8s %8s %12s %12s%n",
                "", "threads", "a second", "us each", "CPU us", "MB before", "MB after");
        for (int threads : new int[] {1, 2}) {
            measure("judged", judged, threads, inspections);
            measure("read and judged", readAndJudged, threads, inspections);
        }
    }

    /** How many outcomes there are; the number is used, so that no compiler leaves the work out. */
    private static int judge(Rulebook rulebook, Inspection inspection) {
        int outcomes = 0;
        for (Inspection.Visited visited : inspection.units()) {
            outcomes += rulebook.assess(visited.observations(), inspection.date())
                    .outcomes()
                    .size();
        }
        return outcomes;
    }

    private static void measure(String name, IntUnaryOperator work, int threads, int inspections)
            throws InterruptedException, ExecutionException {
        run(work, threads, Math.max(5000, inspections / 4));
        double before = heapInUse();
        CPU.set(0);
        long start = System.nanoTime();
        long outcomes = run(work, threads, inspections);
        double seconds = (System.nanoTime() - start) / 1e9;
        double after = heapInUse();
        if (outcomes == 0) {
            throw new IllegalStateException("nothing was judged");
        }
        System.out.printf(
                Locale.ROOT,
                "%-18s %8d %10.0f %8.0f %8.0f %12.1f %12.1f%n",
                name,
                threads,
                inspections / seconds,
                seconds * 1e6 * threads / inspections,
                CPU.get() / 1e3 / inspections,
                before,
                after);
    }

    private static long run(IntUnaryOperator work, int threads, int inspections)
            throws InterruptedException, ExecutionException {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<Long>> parts = new ArrayList<>();
            for (int thread = 0; thread < threads; thread++) {
                int first = thread;
                parts.add(pool.submit(() -> {
                    long outcomes = 0;
                    for (int i = first; i < inspections; i += threads) {
                        outcomes += work.applyAsInt(i);
                    }
                    CPU.addAndGet(ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime());
                    return outcomes;
                }));
            }
            long outcomes = 0;
            for (Future<Long> part : parts) {
                outcomes += part.get();
            }
            return outcomes;
        } finally {
            pool.shutdown();
        }
    }

    private static double heapInUse() throws InterruptedException {
        for (int i = 0; i < 3; i++) {
            System.gc();
            Thread.sleep(50);
        }
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0;
    }
}
