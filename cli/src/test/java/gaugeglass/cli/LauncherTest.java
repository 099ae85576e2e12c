package gaugeglass.cli;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The shell launcher, run for real over a program that only tells what it was given.
 *
 * <p>In the tests of a checkout, Maven is a script that counts its runs: what the launcher decides is tested, not
 * Maven. All paths have spaces.
 */
@EnabledOnOs({OS.LINUX, OS.MAC})
class LauncherTest {
    private static final String PROBE = """
            package gaugeglass.cli;
            public class Main {
                public static void main(String[] args) {
                    System.out.println("args " + String.join("|", args));
                    System.out.println("in " + System.getProperty("user.dir"));
                    System.out.println("jvm " + String.join(" ",
                        java.lang.management.ManagementFactory.getRuntimeMXBean().getInputArguments()));
                    if (args.length == 2 && args[0].equals("exit")) {
                        System.exit(Integer.parseInt(args[1]));
                    }
                }
            }
            """;

    /** Stands in for Maven: tells a version, or counts a build and lays the program. */
    private static final String MAVEN = """
            #!/bin/sh
            [ "$1" = -v ] && { echo "Apache Maven $FAKE_MAVEN_VERSION (of the test)"; exit 0; }
            echo build >>"$FAKE_MAVEN_COUNT"
            echo '[INFO] Building gaugeglass engine 0.1.0-SNAPSHOT                          [2/5]'
            [ -n "${FAKE_MAVEN_FAILS:-}" ] && { echo '[ERROR] it was meant to fail'; exit 1; }
            sleep 1
            mkdir -p "$FAKE_MAVEN_LAYS"
            cp "$FAKE_MAVEN_JAR" "$FAKE_MAVEN_LAYS"
            """;

    @TempDir
    private static Path shared;

    private static Path probeJar;

    @TempDir
    private Path folder;

    private final Map<String, String> environment = new TreeMap<>();

    @BeforeAll
    static void compileProbe() throws IOException {
        Path source = shared.resolve("Main.java");
        Files.writeString(source, PROBE);
        int failed = ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-proc:none", "-d", shared.toString(), source.toString());
        assertThat(failed).isZero();
        probeJar = shared.resolve("probe.jar");
        try (OutputStream file = Files.newOutputStream(probeJar);
                JarOutputStream jar = new JarOutputStream(file)) {
            jar.putNextEntry(new JarEntry("gaugeglass/cli/Main.class"));
            jar.write(Files.readAllBytes(shared.resolve("gaugeglass/cli/Main.class")));
            jar.closeEntry();
        }
    }

    @BeforeEach
    void setEnvironment() {
        environment.put("PATH", System.getenv("PATH"));
        environment.put("JAVA_HOME", System.getProperty("java.home"));
        environment.put("XDG_CACHE_HOME", folder.resolve("cache").toString());
    }

    // ---- a release

    @Test
    void arguments_exit_code_and_folder_are_passed_on_and_output_stays_clean() throws Exception {
        Path launcher = release();
        Path elsewhere = Files.createDirectories(folder.resolve("some where"));

        Run first = run(elsewhere, launcher, "exit", "3");
        Run second = run(elsewhere, launcher, "a b", "*", "");

        assertThat(first.code).isEqualTo(3);
        assertThat(first.out).startsWith("args exit|3\nin " + elsewhere.toRealPath() + "\njvm ");
        assertThat(first.out.lines())
                .as("the first run makes the archive, quietly")
                .hasSize(3);
        assertThat(first.err).isEmpty();
        assertThat(second.code).isZero();
        assertThat(second.out).startsWith("args a b|*|\n");
        assertThat(second.err).isEmpty();
    }

    @Test
    void an_archive_is_made_once_and_then_used() throws Exception {
        Path launcher = release();
        run(folder, launcher);
        List<Path> made = archives();
        assertThat(made).hasSize(1);
        assertThat(made.get(0)).isNotEmptyFile();
        FileTime before = Files.getLastModifiedTime(made.get(0));

        Run second = run(folder, launcher);

        assertThat(second.out).contains("-XX:SharedArchiveFile=" + made.get(0));
        assertThat(archives()).isEqualTo(made);
        assertThat(Files.getLastModifiedTime(made.get(0))).isEqualTo(before);
    }

    @Test
    void in_a_checkout_an_archive_older_than_the_program_is_made_anew() throws Exception {
        Path launcher = checkout();
        run(folder, launcher);
        Path archive = archives().get(0);
        Files.setLastModifiedTime(archive, FileTime.from(Instant.now().minusSeconds(3600)));

        run(folder, launcher);

        assertThat(Files.getLastModifiedTime(archive).toInstant())
                .isAfter(Instant.now().minusSeconds(1800));
    }

    /** Java 17 would leave the class out, as its jar lies in a folder with a space; see the launcher. */
    @Test
    void the_program_itself_comes_out_of_the_archive() throws Exception {
        Path launcher = release();
        run(folder, launcher);
        Path log = shared.resolve("loaded.txt");
        environment.put("GAUGEGLASS_JAVA_OPTS", "-Xlog:class+load:file=" + log);

        run(folder, launcher);

        assertThat(Files.readAllLines(log))
                .anySatisfy(line -> assertThat(line).endsWith("gaugeglass.cli.Main source: shared objects file"));
    }

    @Test
    void a_spoiled_archive_costs_time_only() throws Exception {
        Path launcher = release();
        run(folder, launcher);
        Path archive = archives().get(0);
        Files.delete(archive);
        Files.writeString(archive, "no archive at all");

        Run run = run(folder, launcher, "x");

        assertThat(run.code).isZero();
        assertThat(run.out).startsWith("args x\n");
        assertThat(run.out.lines()).hasSize(3);
    }

    @Test
    void a_cache_that_cannot_be_written_costs_time_only() throws Exception {
        Path launcher = release();
        environment.put(
                "XDG_CACHE_HOME", Files.createFile(folder.resolve("file")).toString());

        Run run = run(folder, launcher, "x");

        assertThat(run.code).isZero();
        assertThat(run.out).startsWith("args x\n").doesNotContain("SharedArchiveFile");
        assertThat(run.err).isEmpty();
    }

    @Test
    void links_are_followed() throws Exception {
        Path launcher = release();
        Path near = Files.createSymbolicLink(launcher.resolveSibling("near"), Path.of("gaugeglass"));
        Path far = Files.createSymbolicLink(folder.resolve("far away"), near);

        assertThat(run(folder, far, "x").out).startsWith("args x\n");
    }

    @Test
    void only_work_on_many_inspections_gets_the_second_compiler() throws Exception {
        Path launcher = release();
        String first = "-XX:TieredStopAtLevel=1";
        Path inspections = Files.createDirectory(folder.resolve("many"));

        assertThat(run(folder, launcher, "assess", "one.yaml").out).contains(first);
        assertThat(run(folder, launcher, "assess", inspections.toString()).out).doesNotContain(first);
        assertThat(run(folder, launcher, "assess", "--as", "jsonl", "x").out).doesNotContain(first);
        assertThat(run(folder, launcher, "assess", "--as=jsonl", "x").out).doesNotContain(first);
        assertThat(run(folder, launcher, "assess", "-").out).doesNotContain(first);
    }

    @Test
    void options_for_the_jvm_are_added() throws Exception {
        environment.put("GAUGEGLASS_JAVA_OPTS", "-XX:+UseParallelGC -Dsome=thing");

        Run run = run(folder, release());

        assertThat(run.code).isZero();
        assertThat(run.out).contains("-XX:+UseParallelGC", "-Dsome=thing").doesNotContain("UseSerialGC");
    }

    @Test
    void missing_java_is_said_and_nothing_is_judged() throws Exception {
        Path launcher = release();
        environment.remove("JAVA_HOME");
        environment.put("PATH", Files.createDirectory(folder.resolve("no java")).toString());
        Run without = run(folder, launcher);
        environment.put("JAVA_HOME", folder.resolve("nothing").toString());
        Run astray = run(folder, launcher);

        assertThat(without.code).isEqualTo(4);
        assertThat(without.out).isEmpty();
        assertThat(without.err).contains("no java on the PATH", "Java 17 or newer", "apt-get install");
        assertThat(astray.code).isEqualTo(4);
        assertThat(astray.err).contains("JAVA_HOME is " + folder.resolve("nothing"));
    }

    @Test
    void java_that_is_too_old_is_said() throws Exception {
        Path launcher = release();
        Path old = folder.resolve("old java");
        script(old.resolve("bin/java"), "#!/bin/sh\necho 'java version \"1.8.0_202\"' >&2\n");
        environment.put("JAVA_HOME", old.toString());

        Run run = run(folder, launcher);

        assertThat(run.code).isEqualTo(4);
        assertThat(run.out).isEmpty();
        assertThat(run.err).contains("Java 17 or newer is needed", "1.8.0_202");
    }

    // ---- a checkout

    @Test
    void a_checkout_is_built_once_with_progress_and_again_when_a_source_changes() throws Exception {
        Path launcher = checkout();

        Run first = run(folder, launcher, "x");
        Run second = run(folder, launcher, "x");
        assertThat(first.code).isZero();
        assertThat(first.out).startsWith("args x\n");
        assertThat(first.err).contains("gaugeglass: building", "gaugeglass engine, 2/5");
        assertThat(second.err).isEmpty();
        assertThat(builds()).isEqualTo(1);

        Path source = folder.resolve("check out/engine/src/main/java/A.java");
        Files.setLastModifiedTime(source, FileTime.from(Instant.now().plusSeconds(1)));
        assertThat(run(folder, launcher).err).contains("a source has changed");
        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void a_deleted_source_is_noticed() throws Exception {
        Path launcher = checkout();
        run(folder, launcher);
        // A file system that counts whole seconds would not tell the two apart.
        Thread.sleep(1100);
        Files.delete(folder.resolve("check out/engine/src/main/java/A.java"));

        run(folder, launcher);

        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void two_launches_at_once_build_once() throws Exception {
        Path launcher = checkout();
        Process one = start(folder, launcher, "one");
        Process two = start(folder, launcher, "two");
        Run first = end(one);
        Run second = end(two);

        assertThat(first.out).startsWith("args one\n");
        assertThat(second.out).startsWith("args two\n");
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void a_lock_whose_owner_is_gone_is_taken_over() throws Exception {
        Path launcher = checkout();
        Process gone = new ProcessBuilder("true").start();
        gone.waitFor();
        Path lock = Files.createDirectories(folder.resolve("check out/cli/target/build.lock"));
        Files.writeString(lock.resolve("pid"), gone.pid() + "\n");

        Run run = run(folder, launcher, "x");

        assertThat(run.code).isZero();
        assertThat(builds()).isEqualTo(1);
        assertThat(lock).doesNotExist();
    }

    @Test
    void a_build_that_fails_is_our_fault_and_is_tried_again() throws Exception {
        Path launcher = checkout();
        environment.put("FAKE_MAVEN_FAILS", "yes");
        Run failed = run(folder, launcher, "x");
        environment.remove("FAKE_MAVEN_FAILS");
        Run mended = run(folder, launcher, "x");

        assertThat(failed.code).isEqualTo(4);
        assertThat(failed.out).isEmpty();
        assertThat(failed.err).contains("[ERROR] it was meant to fail", "the build failed", "build.log");
        assertThat(mended.code).isZero();
        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void maven_that_is_missing_or_too_old_is_said() throws Exception {
        Path launcher = checkout();
        environment.put("FAKE_MAVEN_VERSION", "3.6.3");
        Run old = run(folder, launcher, "x");
        environment.put(
                "PATH", Files.createDirectory(folder.resolve("no maven")).toString());
        for (String tool : List.of("sed", "find", "cat", "ls", "cksum", "rm", "mkdir")) {
            script(folder.resolve("no maven").resolve(tool), "#!/bin/sh\nexec " + tool(tool) + " \"$@\"\n");
        }
        Run without = run(folder, launcher, "x");

        assertThat(old.code).isEqualTo(4);
        assertThat(old.err).contains("Maven 3.8 or newer is needed; this one is 3.6.3");
        assertThat(without.code).isEqualTo(4);
        assertThat(without.err).contains("no mvn on the PATH", "apt-get install maven");
        assertThat(builds()).isZero();
    }

    // ---- help

    private record Run(int code, String out, String err) {}

    private Path release() throws IOException {
        Path home = folder.resolve("un packed");
        Files.createDirectories(home.resolve("lib"));
        Files.copy(probeJar, home.resolve("lib/probe.jar"));
        return script(home.resolve("bin/gaugeglass"), Files.readString(Path.of("bin/gaugeglass")));
    }

    private Path checkout() throws IOException {
        Path root = folder.resolve("check out");
        Files.createDirectories(root.resolve("engine/src/main/java"));
        Files.createFile(root.resolve("engine/src/main/java/A.java"));
        Files.createFile(root.resolve("engine/pom.xml"));
        Files.createFile(root.resolve("pom.xml"));
        Path tools = folder.resolve("tools");
        script(tools.resolve("mvn"), MAVEN);
        environment.put("PATH", tools + ":" + System.getenv("PATH"));
        environment.put("FAKE_MAVEN_VERSION", "3.9.9");
        environment.put("FAKE_MAVEN_COUNT", folder.resolve("builds").toString());
        environment.put("FAKE_MAVEN_JAR", probeJar.toString());
        environment.put("FAKE_MAVEN_LAYS", root.resolve("cli/target/run/lib").toString());
        return script(root.resolve("cli/bin/gaugeglass"), Files.readString(Path.of("bin/gaugeglass")));
    }

    private int builds() throws IOException {
        Path count = folder.resolve("builds");
        return Files.exists(count) ? Files.readAllLines(count).size() : 0;
    }

    private List<Path> archives() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("cache/gaugeglass"))) {
            return files.filter(f -> f.toString().endsWith(".jsa")).toList();
        }
    }

    private static Path script(Path path, String text) throws IOException {
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rwxr-xr-x"));
        return path;
    }

    private static Path tool(String name) {
        return Stream.of(System.getenv("PATH").split(":"))
                .map(place -> Path.of(place, name))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow();
    }

    private Run run(Path where, Path launcher, String... words) throws Exception {
        return end(start(where, launcher, words));
    }

    private Process start(Path where, Path launcher, String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).directory(where.toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        return process;
    }

    private static Run end(Process process) throws InterruptedException {
        // Both fit a pipe's buffer, so that they can be read one after the other.
        String out = text(process.getInputStream());
        String err = text(process.getErrorStream());
        assertThat(process.waitFor(60, SECONDS)).isTrue();
        return new Run(process.exitValue(), out, err);
    }

    private static String text(InputStream stream) {
        try (stream) {
            return new String(stream.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
