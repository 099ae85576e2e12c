package gaugeglass.steam.proof;

import gaugeglass.engine.book.RuleEntry;
import gaugeglass.engine.book.StoredBook;
import gaugeglass.engine.build.Behind;
import gaugeglass.engine.build.RulebookSource;
import gaugeglass.engine.build.Scenario;
import gaugeglass.engine.build.ScenarioReader;
import gaugeglass.engine.build.ScenarioRunner;
import gaugeglass.steam.SteamTrade;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The rulebook as written and as built, with its scenarios; read once for all proofs. */
public final class SteamProof {
    private static final Path FOLDER = Path.of("src/main/rulebook");

    private SteamProof() {}

    /** The rulebook's files, by name. */
    public static Map<String, String> texts() {
        return Once.TEXTS;
    }

    /** The rulebook that the build left on the class path. */
    public static StoredBook stored() {
        return Once.STORED;
    }

    public static ScenarioRunner runner() {
        return Runner.RUNNER;
    }

    /** Every scenario; throws with every mistake where some cannot be read. */
    public static List<Scenario> scenarios() {
        return ScenarioReader.read(
                texts(),
                stored().vocabulary(),
                stored().book().cards(),
                stored().book().limits().keySet());
    }

    /** The limits that a rule uses, by itself or through what is reckoned for it. */
    public static Set<String> limitsBehind(RuleEntry rule) {
        return new Behind(stored().vocabulary(), new SteamTrade()).limits(rule);
    }

    private static final class Once {
        private static final Map<String, String> TEXTS = RulebookSource.files(FOLDER);
        private static final StoredBook STORED = load();

        private static StoredBook load() {
            ClassLoader loader = SteamProof.class.getClassLoader();
            try (InputStream in = loader.getResourceAsStream(StoredBook.PATH)) {
                return StoredBook.read(StoredBook.PATH, new String(in.readAllBytes(), StandardCharsets.UTF_8), loader);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static final class Runner {
        private static final ScenarioRunner RUNNER =
                new ScenarioRunner(Once.STORED, new SteamTrade(), SteamProof.class.getClassLoader());
    }
}
