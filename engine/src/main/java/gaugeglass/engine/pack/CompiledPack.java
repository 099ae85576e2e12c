package gaugeglass.engine.pack;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * What a pack has of its own, compiled: its observations, cards, limits and rules as a stored book, and their classes.
 *
 * @param stored the book as text
 * @param classes class files by path
 */
public record CompiledPack(String stored, Map<String, byte[]> classes) {
    private static final String STORED = "stored.packed";

    /** The package of the classes that a pack of this name is compiled to. */
    public static String packageOf(String packName) {
        return "gaugeglass.packs." + packName.replace('-', '_');
    }

    /** As bytes, for a file. */
    public byte[] write() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            out.putNextEntry(new ZipEntry(STORED));
            out.write(stored.getBytes(StandardCharsets.UTF_8));
            for (Map.Entry<String, byte[]> file : classes.entrySet()) {
                out.putNextEntry(new ZipEntry(file.getKey()));
                out.write(file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /**
     * Reads what {@link #write} gave.
     *
     * @throws IOException when it is something else
     */
    public static CompiledPack read(byte[] bytes) throws IOException {
        Map<String, byte[]> classes = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                classes.put(entry.getName(), in.readAllBytes());
            }
        }
        byte[] stored = classes.remove(STORED);
        if (stored == null) {
            throw new IOException("it is no compiled pack");
        }
        return new CompiledPack(new String(stored, StandardCharsets.UTF_8), classes);
    }

    /** A loader that knows these classes besides its parent's. */
    public ClassLoader loader(ClassLoader parent) {
        return new ByteLoader(classes, parent);
    }
}
