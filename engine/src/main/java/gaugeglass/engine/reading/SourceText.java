package gaugeglass.engine.reading;

import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/** The text of a file, read strictly: UTF-8 and nothing else, of a size that a person's file has. */
public final class SourceText {
    /** The largest file that is read, in bytes. */
    public static final int LARGEST = NodeReader.LONGEST;

    private SourceText() {}

    /**
     * Reads a file.
     *
     * @throws Mistakes when it is not there, is a folder, may not be read, is larger than {@link #LARGEST} or is not
     *     UTF-8 text
     */
    public static String read(Path path) {
        String name = path.toString();
        try {
            if (Files.isDirectory(path)) {
                throw wrong(name, 0, 0, "this is a folder", "a file");
            }
            // Asked first, so that a file of gigabytes is refused with its size and without being read.
            long size = Files.size(path);
            if (size > LARGEST) {
                throw tooLarge(name, size + " bytes");
            }
            try (InputStream in = Files.newInputStream(path)) {
                return read(name, in);
            }
        } catch (NoSuchFileException e) {
            Path parent = path.toAbsolutePath().getParent();
            throw wrong(
                    name,
                    0,
                    0,
                    "there is no such file",
                    parent == null || Files.isDirectory(parent) ? "" : "a folder that exists: " + parent + " does not");
        } catch (AccessDeniedException e) {
            throw wrong(name, 0, 0, "this file may not be read", "permission to read it");
        } catch (IOException e) {
            throw wrong(name, 0, 0, "this file cannot be read: " + reason(e), "");
        }
    }

    /**
     * Reads a stream to its end, and leaves it open.
     *
     * @param name what to call it in messages
     * @throws Mistakes when it is larger than {@link #LARGEST} or is not UTF-8 text
     */
    public static String read(String name, InputStream in) {
        byte[] bytes;
        try {
            bytes = in.readNBytes(LARGEST + 1);
        } catch (IOException e) {
            throw wrong(name, 0, 0, "this cannot be read: " + reason(e), "");
        }
        if (bytes.length > LARGEST) {
            throw tooLarge(name, "more than " + LARGEST + " bytes");
        }
        return of(name, bytes);
    }

    /**
     * The text that these bytes are.
     *
     * @param name what to call it in messages
     * @throws Mistakes when they are not UTF-8 text
     */
    public static String of(String name, byte[] bytes) {
        if (bytes.length > 1 && (begins(bytes, 0xFE, 0xFF) || begins(bytes, 0xFF, 0xFE))) {
            throw wrong(name, 0, 0, "this is UTF-16 text", "the file saved as UTF-8");
        }
        if (begins(bytes, 'P', 'K', 3, 4) || begins(bytes, 0x1F, 0x8B) || begins(bytes, '%', 'P', 'D', 'F')) {
            throw wrong(name, 0, 0, "this is a packed file or an office document", "a text file, YAML or JSON");
        }
        int line = 1;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                line++;
            } else if (bytes[i] == 0) {
                throw wrong(name, line, 0, "a zero byte stands here: this is no text file", "YAML or JSON");
            }
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            int bad = in.position();
            line = 1;
            for (int i = 0; i < bad; i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            throw wrong(
                    name,
                    line,
                    0,
                    "this line holds a byte that is not UTF-8 (" + Integer.toHexString(bytes[bad] & 0xFF) + ")",
                    "the file saved as UTF-8");
        }
        return out.flip().toString();
    }

    private static boolean begins(byte[] bytes, int... wanted) {
        if (bytes.length < wanted.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if ((bytes[i] & 0xFF) != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    private static String reason(IOException e) {
        // Most messages of the file system repeat the name, which stands before ours already.
        String message = e instanceof java.nio.file.FileSystemException f ? f.getReason() : e.getMessage();
        return message == null ? "no more is known" : message;
    }

    private static Mistakes tooLarge(String name, String size) {
        return wrong(name, 0, 0, "this is too large: " + size, "at most " + LARGEST + " bytes");
    }

    private static Mistakes wrong(String name, int line, int column, String what, String expected) {
        return new Mistakes(List.of(new Mistake(name, line, column, "", what, expected, "")));
    }
}
