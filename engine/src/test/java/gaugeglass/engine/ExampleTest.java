package gaugeglass.engine;

import static org.assertj.core.api.Assertions.assertThat;

import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.build.RulebookBuild.Built;
import gaugeglass.engine.toy.Workshop;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example of the package documentation compiles and does what it seems to do. */
class ExampleTest {
    private static final String INSPECTION = """
            format: 1
            site: {id: yard-lane}
            visit: {date: 2026-09-14}
            bicycles:
              - id: R1
                chain: {wear: 1.2 %}
              - id: R2
                frame: {crack: open}
            """;

    @Test
    void the_example_in_the_package_documentation_runs(@TempDir Path folder) throws Exception {
        String documentation = Files.readString(Path.of("src/main/java/gaugeglass/engine/package-info.java"));
        String code = documentation
                .substring(documentation.indexOf("{@code") + 6, documentation.indexOf("}</pre>"))
                .lines()
                .map(line -> line.replaceFirst("^ \\* ?", ""))
                .collect(Collectors.joining("\n"));
        Path source = folder.resolve("Example.java");
        Files.writeString(source, """
                import gaugeglass.engine.Assessment;
                import gaugeglass.engine.Rulebook;
                import gaugeglass.engine.observation.Inspection;
                import gaugeglass.engine.observation.InspectionReader;

                public class Example {
                    private static java.util.function.Consumer<String> to;

                    private static void say(String line) {
                        to.accept(line);
                    }

                    public static void run(ClassLoader loader, String text, java.util.function.Consumer<String> told) {
                        to = told;
                """ + code + "}\n}\n");
        int result = ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-classpath", System.getProperty("java.class.path"), source.toString());
        assertThat(result).as("the example compiles").isZero();

        List<String> told = new ArrayList<>();
        try (URLClassLoader compiled = new URLClassLoader(
                new URL[] {folder.toUri().toURL()}, getClass().getClassLoader())) {
            Consumer<String> sink = told::add;
            compiled.loadClass("Example")
                    .getMethod("run", ClassLoader.class, String.class, Consumer.class)
                    .invoke(null, withRulebook(Workshop.built()), INSPECTION, sink);
        }
        assertThat(told)
                .startsWith("R1: not-known", "now chain.worn: The chain is worn", "wanting brake.fitted")
                .containsSequence("R2: forbidden", "stop frame.cracked: The frame is cracked");
    }

    private static ClassLoader withRulebook(Built built) {
        byte[] stored = built.stored().write().getBytes(StandardCharsets.UTF_8);
        return new ClassLoader(built.loader()) {
            @Override
            public InputStream getResourceAsStream(String name) {
                return name.equals(StoredBook.PATH)
                        ? new ByteArrayInputStream(stored)
                        : super.getResourceAsStream(name);
            }
        };
    }
}
