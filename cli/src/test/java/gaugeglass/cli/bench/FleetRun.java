package gaugeglass.cli.bench;

import gaugeglass.engine.reading.Node;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.reading.SourceText;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Measures {@code gaugeglass fleet} as a whole process over generated inspections on its standard input: how many a
 * second, how much processor time each takes, and the most memory that the process held.
 *
 * <p>The inspections are the given files in turn, each with a site of its own, or spread over a thousand sites; the
 * difference between the two is what a site costs. They are made while they are read, so nothing of this size is ever on
 * disk; the making is part of the time.
 */
public final class FleetRun {
    private static final String HEAP = "-Xmx256m";
    private static final int SITES = 1000;
    private static final int MILLIS_BETWEEN = 200;

    private FleetRun() {}

    /**
     * Measures and prints a table.
     *
     * @param args numbers of inspections joined by commas, the launcher, then files of inspections, at least one
     * @throws IOException when a process cannot be started, or ends early
     * @throws InterruptedException when interrupted
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        List<String> lines = new ArrayList<>();
        for (String file : Arrays.asList(args).subList(2, args.length)) {
            Path path = Path.of(file);
            lines.add(NodeWriter.line(tree(NodeReader.read(file, SourceText.read(path), new ArrayList<>()))));
        }
        System.out.printf("Heap bounded by %s%n", System.getenv().getOrDefault("GAUGEGLASS_JAVA_OPTS", HEAP));
        System.out.printf(
                "%-14s %9s %9s %9s %10s %12s %12s%n",
                "fleet", "visits", "sites", "seconds", "a second", "CPU us each", "peak MB");
        for (String number : args[0].split(",")) {
            int visits = Integer.parseInt(number);
            measure("one site each", args[1], lines, visits, visits);
            measure("many visits", args[1], lines, visits, Math.min(SITES, visits));
        }
    }

    private static Object tree(Node node) {
        if (node instanceof Node.Fields fields) {
            Map<String, Object> all = new LinkedHashMap<>();
            fields.all().forEach((key, field) -> {
                Object value = tree(field.value());
                if (key.equals("site") && value instanceof Map<?, ?> site) {
                    Map<Object, Object> named = new LinkedHashMap<>(site);
                    named.put("id", "@ID@");
                    value = named;
                }
                all.put(key, value);
            });
            return all;
        }
        if (node instanceof Node.Items items) {
            List<Object> all = new ArrayList<>();
            items.all().forEach(one -> all.add(tree(one)));
            return all;
        }
        Node.Scalar scalar = (Node.Scalar) node;
        return !scalar.isQuoted() && scalar.text().matches("[0-9]{1,9}")
                ? (Object) Integer.valueOf(scalar.text())
                : scalar.text();
    }

    private static void measure(String name, String launcher, List<String> lines, int visits, int sites)
            throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(launcher, "fleet", "-", "--lines", "--as", "json");
        // Within this all of it has to be kept; without a bound the process takes what the machine lets it have.
        builder.environment().putIfAbsent("GAUGEGLASS_JAVA_OPTS", HEAP);
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.redirectError(ProcessBuilder.Redirect.INHERIT);
        long start = System.nanoTime();
        Process process = builder.start();
        Thread writer = new Thread(() -> {
            try (OutputStream out = new BufferedOutputStream(process.getOutputStream(), 1 << 16)) {
                for (int i = 0; i < visits; i++) {
                    String line = lines.get(i % lines.size()).replace("@ID@", "site-" + i % sites) + "\n";
                    out.write(line.getBytes(StandardCharsets.UTF_8));
                }
            } catch (IOException e) {
                System.out.println("it stopped reading: " + e.getMessage());
            }
        });
        writer.start();
        long peak = 0;
        Duration cpu = Duration.ZERO;
        do {
            peak = Math.max(peak, peak(process.pid()));
            cpu = process.toHandle().info().totalCpuDuration().orElse(cpu);
        } while (!process.waitFor(MILLIS_BETWEEN, TimeUnit.MILLISECONDS));
        double seconds = (System.nanoTime() - start) / 1e9;
        writer.join();
        if (process.exitValue() != 0) {
            throw new IOException("fleet ended with " + process.exitValue());
        }
        System.out.printf(
                Locale.ROOT,
                "%-14s %9d %9d %9.1f %10.0f %12s %12s%n",
                name,
                visits,
                sites,
                seconds,
                visits / seconds,
                cpu.isZero() ? "not known" : String.format(Locale.ROOT, "%.0f", cpu.toMillis() * 1000.0 / visits),
                peak == 0 ? "not known" : String.valueOf(peak / 1024));
    }

    /** The most memory that a process has held, in kibibytes; 0 where the system does not tell. */
    private static long peak(long pid) {
        try {
            for (String line : Files.readAllLines(Path.of("/proc/" + pid + "/status"))) {
                if (line.startsWith("VmHWM:")) {
                    return Long.parseLong(line.replaceAll("[^0-9]", ""));
                }
            }
        } catch (IOException e) {
            // It has just ended, or this is no Linux.
        }
        return 0;
    }
}
