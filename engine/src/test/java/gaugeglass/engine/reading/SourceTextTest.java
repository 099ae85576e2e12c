package gaugeglass.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import gaugeglass.engine.text.Mistakes;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceTextTest {
    @TempDir
    Path folder;

    private static void refused(Path path, String message) {
        assertThatThrownBy(() -> SourceText.read(path))
                .isInstanceOf(Mistakes.class)
                .hasMessage(path + ": " + message);
    }

    @Test
    void a_text_of_many_tongues_is_read_as_it_is() throws IOException {
        Path file = Files.writeString(folder.resolve("a.yaml"), "é 漢 🔧\r\n");
        assertThat(SourceText.read(file)).isEqualTo("é 漢 🔧\r\n");
    }

    @Test
    void a_file_that_is_not_there_is_named() {
        refused(folder.resolve("a.yaml"), "there is no such file");
        refused(
                folder.resolve("no").resolve("a.yaml"),
                "there is no such file; expected a folder that exists: "
                        + folder.resolve("no").toAbsolutePath() + " does not");
    }

    @Test
    void a_folder_is_no_file() {
        refused(folder, "this is a folder; expected a file");
    }

    @Test
    void a_file_of_200_megabytes_is_refused_unread() throws IOException {
        Path file = folder.resolve("large.yaml");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(200L * 1024 * 1024);
        }
        refused(file, "this is too large: 209715200 bytes; expected at most 8388608 bytes");
    }

    @Test
    void a_stream_without_end_is_refused() {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return 'a';
            }

            @Override
            public int read(byte[] bytes, int from, int length) {
                java.util.Arrays.fill(bytes, from, from + length, (byte) 'a');
                return length;
            }
        };
        assertThatThrownBy(() -> SourceText.read("standard input", endless))
                .hasMessage(
                        "standard input: this is too large: more than 8388608 bytes; expected at most 8388608 bytes");
    }

    @Test
    void a_file_without_permission_is_named() throws IOException {
        Path file = Files.writeString(folder.resolve("a.yaml"), "a: 1");
        boolean isClosed = file.toFile().setReadable(false);
        // Who runs as the administrator may read everything, and file systems without permissions have none to take.
        assumeFalse(!isClosed || Files.isReadable(file));
        refused(file, "this file may not be read; expected permission to read it");
    }

    @Test
    void bytes_that_are_not_utf_8_are_named_with_their_line() {
        byte[] latin = "a: 1\nb: caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> SourceText.of("f", latin))
                .hasMessage("f:2: this line holds a byte that is not UTF-8 (e9); expected the file saved as UTF-8");
    }

    @Test
    void a_character_cut_off_at_the_end_is_named() {
        assertThatThrownBy(() -> SourceText.read("f", new ByteArrayInputStream(new byte[] {'a', (byte) 0xC3})))
                .hasMessageContaining("not UTF-8 (c3)");
    }
}
