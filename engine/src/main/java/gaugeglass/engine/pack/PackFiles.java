package gaugeglass.engine.pack;

import gaugeglass.engine.reading.SourceText;
import gaugeglass.engine.text.Digest;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import gaugeglass.engine.text.Nearest;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;

/**
 * The files of a pack, from a folder or a zip, as bytes.
 *
 * <p>A pack is flat and small: no folders in it, no links, at most {@link #MOST_FILES} files and {@link #LARGEST} bytes.
 * So nothing in it can lead out of it, and nothing can swell when it is unpacked.
 */
public final class PackFiles {
    /** The file that makes a folder a pack. */
    public static final String MANIFEST = "pack.yaml";

    /** The file that holds its signature, which is no part of what is signed. */
    public static final String SIGNATURE = "pack.signature";

    /** So many files a pack may have. */
    public static final int MOST_FILES = 200;

    /** So many bytes they may have together. */
    public static final int LARGEST = 4 * 1024 * 1024;

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 _-]*(\\.[A-Za-z0-9_-]+)+");

    /** What operating systems and office programs leave behind; it is no part of a pack. */
    private static final Pattern LITTER = Pattern.compile("\\..*|~\\$.*|Thumbs\\.db|desktop\\.ini|.*~|__MACOSX/.*");

    /** Files that people may add for one another; they are signed, and say nothing to the program. */
    private static final Pattern NOTES = Pattern.compile("(?i).*\\.(md|txt)");

    private static final Set<String> KNOWN = Set.of(
            MANIFEST,
            "limits.yaml",
            "limits.csv",
            "settled.yaml",
            "words.yaml",
            "urgencies.yaml",
            "checklist.yaml",
            "waivers.yaml",
            "observations.yaml",
            "cautions.yaml",
            "remedies.yaml",
            "replaced.yaml",
            SIGNATURE);

    private final String name;
    private final Map<String, byte[]> files;
    private final String hash;

    private PackFiles(String name, Map<String, byte[]> files) {
        this.name = name;
        this.files = Collections.unmodifiableMap(files);
        this.hash = digest(files);
    }

    /**
     * Takes up a pack.
     *
     * @param path a folder or a zip
     * @throws Mistakes with everything that cannot be a pack's
     */
    public static PackFiles read(Path path) {
        String name = path.toString();
        List<Mistake> mistakes = new ArrayList<>();
        Map<String, byte[]> files = new TreeMap<>();
        try {
            if (Files.isDirectory(path)) {
                folder(path, files, mistakes);
            } else if (Files.isRegularFile(path)) {
                if (Files.size(path) > LARGEST) {
                    throw new Mistakes(List.of(tooLarge(name)));
                }
                try (InputStream in = Files.newInputStream(path)) {
                    zip(name, in, files, mistakes);
                }
            } else {
                mistakes.add(new Mistake(name, 0, 0, "", "there is no such pack", "a folder or a zip", ""));
            }
        } catch (IOException e) {
            mistakes.add(new Mistake(name, 0, 0, "", "this pack cannot be read: " + reason(e), "", ""));
        }
        if (mistakes.isEmpty() && !files.containsKey(MANIFEST)) {
            mistakes.add(new Mistake(
                    name,
                    0,
                    0,
                    "",
                    "there is no " + MANIFEST + " in it, so this is no pack",
                    MANIFEST,
                    Nearest.to(MANIFEST, files.keySet()).orElse("")));
        }
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        return new PackFiles(name, files);
    }

    /** A pack that is only in memory; its file names are taken as they are. */
    public static PackFiles of(String name, Map<String, byte[]> files) {
        return new PackFiles(name, new TreeMap<>(files));
    }

    private static void folder(Path folder, Map<String, byte[]> files, List<Mistake> mistakes) throws IOException {
        long bytes = 0;
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path file : all) {
                String name = String.valueOf(file.getFileName());
                if (LITTER.matcher(name).matches()) {
                    continue;
                }
                String place = folder + "/" + name;
                if (Files.isSymbolicLink(file)) {
                    mistakes.add(new Mistake(place, 0, 0, "", "this is a link", "the file itself", ""));
                } else if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                    mistakes.add(new Mistake(place, 0, 0, "", "a pack has no folders in it", "files only", ""));
                } else if (known(folder.toString(), name, mistakes)) {
                    bytes += Files.size(file);
                    if (bytes > LARGEST || files.size() >= MOST_FILES) {
                        mistakes.add(tooLarge(folder.toString()));
                        return;
                    }
                    files.put(name, Files.readAllBytes(file));
                }
            }
        }
    }

    private static void zip(String zip, InputStream stream, Map<String, byte[]> files, List<Mistake> mistakes)
            throws IOException {
        int entries = 0;
        int left = LARGEST;
        String top = "";
        try (ZipInputStream in = new ZipInputStream(stream, StandardCharsets.UTF_8)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (++entries > MOST_FILES * 2) {
                    mistakes.add(tooLarge(zip));
                    return;
                }
                String name = entry.getName();
                int slash = name.indexOf('/');
                // A folder that was packed as a whole stands before every name in it.
                if (slash > 0 && (top.isEmpty() || name.startsWith(top)) && !name.startsWith("__MACOSX/")) {
                    top = name.substring(0, slash + 1);
                    name = name.substring(slash + 1);
                    if (top.startsWith("..") || top.indexOf('\\') >= 0 || top.indexOf(':') >= 0) {
                        mistakes.add(leadsOut(zip, entry.getName()));
                        continue;
                    }
                }
                if (name.isEmpty() || LITTER.matcher(name).matches() && !name.startsWith("..")) {
                    continue;
                }
                if (name.startsWith("..")
                        || name.contains("/..")
                        || name.startsWith("/")
                        || name.indexOf('\\') >= 0
                        || name.indexOf(':') >= 0) {
                    mistakes.add(leadsOut(zip, entry.getName()));
                    continue;
                }
                if (entry.isDirectory() || name.indexOf('/') >= 0) {
                    mistakes.add(new Mistake(
                            zip + "/" + entry.getName(), 0, 0, "", "a pack has no folders in it", "files only", ""));
                    continue;
                }
                if (!known(zip, name, mistakes)) {
                    continue;
                }
                byte[] bytes = in.readNBytes(left + 1);
                left -= bytes.length;
                if (left < 0 || files.size() >= MOST_FILES) {
                    mistakes.add(tooLarge(zip));
                    return;
                }
                if (files.put(name, bytes) != null) {
                    mistakes.add(new Mistake(
                            zip + "/" + name, 0, 0, "", "this file stands in the zip twice", "it once", ""));
                }
            }
        } catch (ZipException | IllegalArgumentException e) {
            mistakes.add(new Mistake(zip, 0, 0, "", "this zip is broken", "a zip that can be unpacked", ""));
            return;
        }
        if (entries == 0) {
            mistakes.add(new Mistake(zip, 0, 0, "", "this is no pack", "a folder or a zip with " + MANIFEST, ""));
        }
    }

    private static Mistake leadsOut(String zip, String name) {
        return new Mistake(zip, 0, 0, "", "the name \"" + name + "\" leads out of the pack", "plain file names", "");
    }

    /** Whether a file may be a pack's; where it may not, that is a mistake. */
    private static boolean known(String pack, String name, List<Mistake> mistakes) {
        boolean isNamedWell = NAME.matcher(name).matches();
        if (isNamedWell
                && (KNOWN.contains(name)
                        || NOTES.matcher(name).matches()
                        || name.endsWith(".drl")
                        || name.endsWith(".cards.yaml"))) {
            return true;
        }
        mistakes.add(new Mistake(
                pack + "/" + name,
                0,
                0,
                "",
                isNamedWell ? "this file has no meaning in a pack" : "a file of a pack may not be called this",
                "one of " + String.join(", ", new java.util.TreeSet<>(KNOWN))
                        + ", SUBJECT.drl, SUBJECT.cards.yaml, or notes as .md or .txt",
                Nearest.to(name.toLowerCase(Locale.ROOT), KNOWN).orElse("")));
        return false;
    }

    private static Mistake tooLarge(String name) {
        return new Mistake(
                name,
                0,
                0,
                "",
                "this is too large for a pack",
                "at most " + MOST_FILES + " files with " + LARGEST + " bytes in all",
                "");
    }

    private static String reason(IOException e) {
        String message = e instanceof java.nio.file.FileSystemException f ? f.getReason() : e.getMessage();
        return message == null ? "no more is known" : message;
    }

    /** As the person named it. */
    public String name() {
        return name;
    }

    /** The files' names, in order. */
    public Set<String> names() {
        return files.keySet();
    }

    public boolean has(String file) {
        return files.containsKey(file);
    }

    /** A file's bytes, as they are; none where there is no such file. */
    public byte[] bytes(String file) {
        return files.getOrDefault(file, new byte[0]);
    }

    /** What a file is called in messages. */
    public String place(String file) {
        return name + "/" + file;
    }

    /**
     * A file's text, without a byte-order mark.
     *
     * @throws Mistakes when it is no UTF-8 text
     */
    public String text(String file) {
        String text = SourceText.of(place(file), bytes(file));
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** Whether it holds what must be compiled, and so runs as code. */
    public boolean hasRules() {
        return files.keySet().stream().anyMatch(name -> name.endsWith(".drl") || name.equals("observations.yaml"));
    }

    /** SHA-256 over every file's name and bytes but the signature's, in hexadecimal. */
    public String hash() {
        return hash;
    }

    private static String digest(Map<String, byte[]> files) {
        Digest digest = new Digest();
        new TreeMap<>(files).forEach((name, bytes) -> {
            if (!name.equals(SIGNATURE)) {
                digest.add(name + "\0" + bytes.length + "\0").add(bytes);
            }
        });
        return digest.hex();
    }
}
