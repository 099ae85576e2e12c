package gaugeglass.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.build.MadeUpVisits;
import gaugeglass.engine.build.RulebookBuild.Built;
import gaugeglass.engine.observation.Observations;
import gaugeglass.engine.toy.Workshop;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** What every other program may rely on. */
class EmbeddingTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private final Rulebook rulebook = Workshop.rulebook();

    private List<Observations> visits(int number) {
        MadeUpVisits made =
                new MadeUpVisits(rulebook.vocabulary(), rulebook.book().allLimits(), DAY, 11);
        List<Observations> visits = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            visits.add(made.next(0.7, 0.1));
        }
        return visits;
    }

    @Test
    void the_same_visit_is_judged_the_same_twice() {
        for (Observations visit : visits(20)) {
            assertThat(rulebook.assess(visit, DAY)).isEqualTo(rulebook.assess(visit, DAY));
        }
    }

    @Test
    void several_threads_give_equal_results() throws Exception {
        List<Observations> visits = visits(40);
        List<Assessment> alone =
                visits.stream().map(v -> rulebook.assess(v, DAY)).toList();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<List<Assessment>>> all = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                all.add(threads.submit(
                        () -> visits.stream().map(v -> rulebook.assess(v, DAY)).toList()));
            }
            for (Future<List<Assessment>> one : all) {
                assertThat(one.get()).isEqualTo(alone);
            }
        } finally {
            threads.shutdownNow();
        }
    }

    /** Loads the trade's classes, the compiled rules and the stored rulebook by itself, the engine by its parent. */
    private static final class Apart extends ClassLoader {
        private final Map<String, byte[]> files = new HashMap<>();

        private Apart(Built built) throws IOException {
            super(Workshop.class.getClassLoader());
            files.putAll(built.compiled().classes());
            files.put(StoredBook.PATH, built.stored().write().getBytes(StandardCharsets.UTF_8));
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            if (!name.startsWith("gaugeglass.engine.toy.")) {
                return super.loadClass(name, resolve);
            }
            Class<?> known = findLoadedClass(name);
            if (known != null) {
                return known;
            }
            String path = name.replace('.', '/') + ".class";
            try (InputStream in = files.containsKey(path)
                    ? new ByteArrayInputStream(files.get(path))
                    : getParent().getResourceAsStream(path)) {
                if (in == null) {
                    throw new ClassNotFoundException(name);
                }
                byte[] bytes = in.readAllBytes();
                return defineClass(name, bytes, 0, bytes.length);
            } catch (IOException e) {
                throw new ClassNotFoundException(name, e);
            }
        }

        @Override
        public InputStream getResourceAsStream(String name) {
            byte[] bytes = files.get(name);
            return bytes == null ? super.getResourceAsStream(name) : new ByteArrayInputStream(bytes);
        }
    }

    @Test
    void a_rulebook_works_from_two_class_loaders_at_once() throws IOException {
        Rulebook one = Rulebook.load(new Apart(Workshop.built()));
        Rulebook two = Rulebook.load(new Apart(Workshop.built()));
        Class<?> first = one.vocabulary().item("frame.crack").orElseThrow().type();
        Class<?> second = two.vocabulary().item("frame.crack").orElseThrow().type();
        assertThat(first).isNotEqualTo(second);

        for (int seed = 0; seed < 10; seed++) {
            Observations a = new MadeUpVisits(one.vocabulary(), one.book().allLimits(), DAY, seed).next(0.8, 0.1);
            Observations b = new MadeUpVisits(two.vocabulary(), two.book().allLimits(), DAY, seed).next(0.8, 0.1);
            assertThat(one.assess(a, DAY).outcomes())
                    .isEqualTo(two.assess(b, DAY).outcomes());
            assertThat(one.assess(a, DAY).findings().toString())
                    .isEqualTo(two.assess(b, DAY).findings().toString());
        }
    }

    @Test
    void a_class_path_without_a_rulebook_is_named() {
        assertThatThrownBy(() -> Rulebook.load(ClassLoader.getPlatformClassLoader()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining(StoredBook.PATH);
    }

    @Test
    void a_stored_rulebook_of_another_format_is_refused() {
        String stored = Workshop.built().stored().write();
        for (String other : List.of(stored.replaceFirst("rulebook \\d+", "rulebook 0"), stored + " ", "{}", "")) {
            assertThatThrownBy(() -> StoredBook.read("book", other, Workshop.class.getClassLoader()))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("book");
        }
    }
}
