package gaugeglass.cli.pack;

import gaugeglass.engine.Rulebook;
import gaugeglass.engine.pack.CompiledPack;
import gaugeglass.engine.pack.Pack;
import gaugeglass.engine.pack.PackFiles;
import gaugeglass.engine.text.Digest;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Compiles what a pack has of its own, or takes it from what was compiled before.
 *
 * <p>What compiles rules is not on the class path. It lies in a folder of its own, and is loaded, with this program a second
 * time beside it, by a class loader that shares nothing with the caller but the Java library. Bytes go in and come out.
 */
public final class Workshop {
    /** The launcher tells here where the folder is. */
    private static final String FOLDER = "gaugeglass.workshop";

    private static final String BENCH = "gaugeglass.engine.build.PackBench";

    private final Path kept;

    /**
     * A workshop.
     *
     * @param home where the user's own things are; what was compiled is kept there
     */
    public Workshop(Path home) {
        this.kept = home.resolve("compiled");
    }

    /**
     * What a pack has of its own, compiled.
     *
     * @param standardPacked the rulebook that it is laid over, as stored
     * @throws Mistakes with everything that is wrong in it
     */
    public CompiledPack compiled(Pack pack, String standardPacked) {
        List<Path> jars = jars();
        Path file = kept.resolve(key(pack, standardPacked, jars) + ".zip");
        try {
            if (Files.isRegularFile(file)) {
                return CompiledPack.read(Files.readAllBytes(file));
            }
        } catch (IOException e) {
            // What cannot be read is made anew.
        }
        byte[] bytes = build(pack, jars);
        keep(file, bytes);
        try {
            return CompiledPack.read(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Keeps what may be made anew; where that fails nothing is kept. */
    static void keep(Path file, byte[] bytes) {
        try {
            Files.createDirectories(file.getParent());
            Path next = Files.createTempFile(file.getParent(), "next", ".part");
            Files.write(next, bytes);
            try {
                Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(next, file, StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            // Then it is made again next time.
        }
    }

    private static String key(Pack pack, String standardPacked, List<Path> jars) {
        Digest digest = new Digest()
                .add(pack.files().hash()
                        + '\n'
                        + pack.name()
                        + '\n'
                        + pack.files().name()
                        + '\n');
        jars.forEach(jar -> digest.add(jar.getFileName() + "\n"));
        return digest.add(standardPacked).hex();
    }

    @SuppressWarnings("unchecked")
    private static byte[] build(Pack pack, List<Path> jars) {
        PackFiles files = pack.files();
        Map<String, byte[]> bytes = new LinkedHashMap<>();
        files.names().forEach(name -> bytes.put(name, files.bytes(name)));
        Set<Path> all = new LinkedHashSet<>(own());
        all.addAll(jars);
        List<URL> urls = new ArrayList<>();
        try {
            for (Path path : all) {
                urls.add(path.toUri().toURL());
            }
            try (URLClassLoader loader =
                    new URLClassLoader("workshop", urls.toArray(new URL[0]), ClassLoader.getPlatformClassLoader())) {
                Object built = Class.forName(BENCH, true, loader)
                        .getMethod("build", String.class, Map.class, String.class, String.class, List.class)
                        .invoke(
                                null,
                                files.name(),
                                bytes,
                                pack.name(),
                                pack.title() + " " + pack.version(),
                                all.stream().map(Path::toString).toList());
                if (built instanceof byte[] compiled) {
                    return compiled;
                }
                List<Mistake> mistakes = new ArrayList<>();
                for (List<Object> one : (List<List<Object>>) built) {
                    mistakes.add(new Mistake(
                            (String) one.get(0),
                            (Integer) one.get(1),
                            (Integer) one.get(2),
                            (String) one.get(3),
                            (String) one.get(4),
                            (String) one.get(5),
                            (String) one.get(6)));
                }
                throw new Mistakes(mistakes);
            }
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the pack " + pack.name() + " cannot be compiled", e.getCause());
        } catch (IOException | ReflectiveOperationException e) {
            throw new IllegalStateException("what compiles rules cannot be loaded", e);
        }
    }

    /** The jars that compile rules. */
    private static List<Path> jars() {
        String told = System.getProperty(FOLDER, "");
        Path folder = told.isEmpty() || !Files.isDirectory(Path.of(told)) ? beside() : Path.of(told);
        if (!Files.isDirectory(folder)) {
            throw new IllegalStateException(
                    "there is no folder \"workshop\" in this program; is the release unpacked whole?");
        }
        return in(folder);
    }

    private static List<Path> in(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> file.toString().endsWith(".jar")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException("the folder \"workshop\" cannot be read", e);
        }
    }

    /** Where it lies beside the jars of a release, or beside what a build made. */
    private static Path beside() {
        Path engine = place();
        Path near = engine.resolveSibling("workshop");
        return Files.isDirectory(near)
                ? near
                : Path.of(String.valueOf(engine.getParent())).resolveSibling("workshop");
    }

    private static Path place() {
        CodeSource source = Rulebook.class.getProtectionDomain().getCodeSource();
        try {
            URI uri = source.getLocation().toURI();
            return Path.of(uri);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("this program does not know where it is", e);
        }
    }

    /** This program's own classes. */
    private static List<Path> own() {
        List<Path> all = new ArrayList<>();
        for (String part : System.getProperty("java.class.path", "").split(java.io.File.pathSeparator)) {
            all.add(Path.of(part).toAbsolutePath());
        }
        return all;
    }
}
