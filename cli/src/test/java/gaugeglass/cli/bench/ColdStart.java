package gaugeglass.cli.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.tools.ToolProvider;

/**
 * Measures whole processes, from start to exit, side by side.
 *
 * <p>Each round runs every command once, so that a machine that slows down slows all of them; the first two rounds do
 * not count. Printed are the median and the best time, and the median as a multiple of that of a JVM that only says
 * hello. It is one file without a dependency and is run from source by {@code cli/bin/benchmark}.
 */
public final class ColdStart {
    private static final int ROUNDS_NOT_COUNTED = 2;

    private ColdStart() {}

    /**
     * Measures and prints a table.
     *
     * @param args rounds to count (at least 1), the launcher, an inspection file; then, if rules are to be compiled at
     *     run time too, the words of the command that does so
     * @throws IOException when a command cannot be started
     * @throws InterruptedException when interrupted
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        int rounds = Integer.parseInt(args[0]);
        String launcher = args[1];
        String inspection = args[2];
        Path scratch = Files.createTempDirectory("gaugeglass-bench");
        try {
            String java =
                    Path.of(System.getProperty("java.home"), "bin", "java").toString();
            String hello = compileHello(scratch).toString();

            Map<String, List<String>> commands = new LinkedHashMap<>();
            commands.put("bare JVM, hello", List.of(java, "-cp", hello, "Hello"));
            commands.put(
                    "bare JVM, with the launcher's flags",
                    List.of(java, "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp", hello, "Hello"));
            commands.put("gaugeglass --version", List.of(launcher, "--version"));
            commands.put("gaugeglass check FILE", List.of(launcher, "check", inspection));
            commands.put("gaugeglass assess FILE", List.of(launcher, "assess", inspection));
            if (args.length > 3) {
                commands.put(
                        "assess, rules compiled at run time",
                        Arrays.asList(args).subList(3, args.length));
            }
            print(measure(commands, rounds));
        } finally {
            deleteTree(scratch);
        }
    }

    private static Path compileHello(Path folder) throws IOException {
        Path source = folder.resolve("Hello.java");
        Files.writeString(
                source, "class Hello { public static void main(String[] a) { System.out.println(\"hello\"); } }");
        var compiler = ToolProvider.getSystemJavaCompiler();
        if (compiler == null || compiler.run(null, null, null, source.toString()) != 0) {
            throw new IllegalStateException("measuring needs a JDK; this Java cannot compile");
        }
        return folder;
    }

    /** Seconds of every counted run, by command, in the order of the commands. */
    private static Map<String, List<Double>> measure(Map<String, List<String>> commands, int rounds)
            throws IOException, InterruptedException {
        Map<String, List<Double>> seconds = new LinkedHashMap<>();
        commands.keySet().forEach(name -> seconds.put(name, new ArrayList<>()));
        for (int round = -ROUNDS_NOT_COUNTED; round < rounds; round++) {
            for (var command : commands.entrySet()) {
                double taken = run(command.getKey(), command.getValue());
                if (round >= 0) {
                    seconds.get(command.getKey()).add(taken);
                }
            }
        }
        return seconds;
    }

    private static double run(String name, List<String> words) throws IOException, InterruptedException {
        long start = System.nanoTime();
        Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
        process.getOutputStream().close();
        byte[] said = process.getInputStream().readAllBytes();
        int code = process.waitFor();
        double taken = (System.nanoTime() - start) / 1e9;
        // 1 is a judgement too: something was found. The time of a failure would be no measure of anything.
        if (code > 1 || said.length == 0) {
            throw new IllegalStateException(name + " ended with " + code + ": " + new String(said).strip());
        }
        return taken;
    }

    private static void print(Map<String, List<Double>> seconds) {
        System.out.printf(
                "whole processes; %s %s, %d cores%n",
                System.getProperty("java.vm.name"),
                Runtime.version(),
                Runtime.getRuntime().availableProcessors());
        System.out.printf("%-38s %8s %8s %8s %6s%n", "", "median s", "best s", "x bare", "runs");
        double bare = -1;
        for (var entry : seconds.entrySet()) {
            double[] sorted = entry.getValue().stream()
                    .mapToDouble(Double::doubleValue)
                    .sorted()
                    .toArray();
            double median = (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
            if (bare < 0) {
                bare = median;
            }
            System.out.printf(
                    Locale.ROOT,
                    "%-38s %8.3f %8.3f %8.1f %6d%n",
                    entry.getKey(),
                    median,
                    sorted[0],
                    median / bare,
                    sorted.length);
        }
    }

    private static void deleteTree(Path folder) throws IOException {
        try (var tree = Files.walk(folder)) {
            for (Path path : tree.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(path);
            }
        }
    }
}
