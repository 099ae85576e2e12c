package gaugeglass.cli.printed;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which photos are taken, and what becomes of them. */
class PhotosTest {
    @TempDir
    private Path root;

    private Photos photos() throws IOException {
        return new Photos(Optional.of(Files.createDirectories(root.resolve("visit"))));
    }

    private static byte[] jpeg(int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < height; y++) {
                image.setRGB(x, y, x < width / 2 ? 0xFFFFFF : 0);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", out);
        return out.toByteArray();
    }

    /** The same picture with a note of how the camera was held: an Exif part after the first mark (CIPA DC-008). */
    private static byte[] held(byte[] jpeg, int orientation) {
        byte[] exif = {
            (byte) 0xFF,
            (byte) 0xE1,
            0,
            34,
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'M',
            'M',
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            1,
            0x01,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            (byte) orientation,
            0,
            0,
            0,
            0,
            0,
            0
        };
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.writeBytes(exif);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static BufferedImage shown(Photos.Photo photo) throws IOException {
        assertThat(photo.missing()).isEmpty();
        String data = photo.data().substring("data:image/jpeg;base64,".length());
        return ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(data)));
    }

    private static boolean isWhite(BufferedImage image, int x, int y) {
        return (image.getRGB(x, y) & 0xFF) > 128;
    }

    @Test
    void a_photo_beside_the_inspection_or_below_it_is_taken() throws Exception {
        Photos photos = photos();
        Files.createDirectories(root.resolve("visit/more"));
        Files.write(root.resolve("visit/more/a.jpg"), jpeg(40, 20));

        BufferedImage image = shown(photos.of("more/a.jpg", "what"));

        assertThat(image.getWidth()).isEqualTo(40);
        assertThat(image.getHeight()).isEqualTo(20);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"../secret.jpg", "more/../../secret.jpg", "/etc/passwd", "..", "link.jpg", "linked/secret.jpg"})
    void nothing_outside_the_inspections_folder_is_taken(String name) throws Exception {
        Photos photos = photos();
        Files.createDirectories(root.resolve("visit/more"));
        Files.write(root.resolve("secret.jpg"), jpeg(40, 20));
        Files.createSymbolicLink(root.resolve("visit/link.jpg"), root.resolve("secret.jpg"));
        Files.createSymbolicLink(root.resolve("visit/linked"), root);

        Photos.Photo photo = photos.of(name, "what");

        assertThat(photo.data()).isEmpty();
        assertThat(photo.missing()).isEqualTo("it does not lie in the inspection's folder");
    }

    @Test
    void what_is_no_picture_is_told() throws Exception {
        Photos photos = photos();
        Files.writeString(root.resolve("visit/a.jpg"), "<svg onload='alert(1)'/>");
        Files.write(root.resolve("visit/cut.jpg"), java.util.Arrays.copyOf(jpeg(400, 200), 150));
        Files.createDirectory(root.resolve("visit/folder.jpg"));

        assertThat(photos.of("a.jpg", "").missing()).contains("no JPEG or PNG");
        assertThat(photos.of("cut.jpg", "").missing()).contains("no JPEG or PNG");
        assertThat(photos.of("folder.jpg", "").missing()).contains("no such file");
        assertThat(photos.of("gone.jpg", "").missing()).contains("no such file");
        assertThat(photos.of("\u0000.jpg", "").missing()).contains("cannot be the name of a file");
    }

    @Test
    void a_photo_larger_than_any_camera_makes_is_not_read() throws Exception {
        Photos photos = photos();
        try (var file = new java.io.RandomAccessFile(root.resolve("visit/a.jpg").toFile(), "rw")) {
            file.setLength(26L << 20);
        }

        assertThat(photos.of("a.jpg", "").missing()).isEqualTo("it is larger than 25 MB");
    }

    @Test
    void an_inspection_from_standard_input_has_no_photos() {
        assertThat(new Photos(Optional.empty()).of("a.jpg", "").missing()).contains("standard input");
    }

    @Test
    void large_photos_are_made_small_enough_to_send() throws Exception {
        Photos photos = photos();
        Files.write(root.resolve("visit/a.jpg"), jpeg(3000, 1500));

        BufferedImage image = shown(photos.of("a.jpg", ""));

        assertThat(image.getWidth()).isEqualTo(1400);
        assertThat(image.getHeight()).isEqualTo(700);
    }

    /** Left is white. With 6 the camera was turned so that what was left comes to stand at the top; with 8 below. */
    @Test
    void a_photo_is_turned_as_the_camera_was_held() throws Exception {
        Photos photos = photos();
        for (int orientation : new int[] {1, 2, 3, 4, 5, 6, 7, 8}) {
            Files.write(root.resolve("visit/" + orientation + ".jpg"), held(jpeg(40, 20), orientation));
        }

        assertThat(isWhite(shown(photos.of("1.jpg", "")), 2, 10)).isTrue();
        assertThat(isWhite(shown(photos.of("2.jpg", "")), 2, 10)).isFalse();
        assertThat(isWhite(shown(photos.of("3.jpg", "")), 2, 10)).isFalse();
        assertThat(isWhite(shown(photos.of("4.jpg", "")), 2, 10)).isTrue();
        for (int turned : new int[] {5, 6}) {
            BufferedImage image = shown(photos.of(turned + ".jpg", ""));
            assertThat(image.getHeight()).isEqualTo(40);
            assertThat(isWhite(image, 10, 2)).as("orientation " + turned).isTrue();
            assertThat(isWhite(image, 10, 37)).isFalse();
        }
        for (int turned : new int[] {7, 8}) {
            BufferedImage image = shown(photos.of(turned + ".jpg", ""));
            assertThat(isWhite(image, 10, 2)).as("orientation " + turned).isFalse();
            assertThat(isWhite(image, 10, 37)).isTrue();
        }
    }

    @Test
    void what_else_the_camera_noted_is_left_out() throws Exception {
        Photos photos = photos();
        Files.write(root.resolve("visit/a.jpg"), held(jpeg(40, 20), 1));

        byte[] shown =
                Base64.getDecoder().decode(photos.of("a.jpg", "").data().substring("data:image/jpeg;base64,".length()));

        assertThat(new String(shown, java.nio.charset.StandardCharsets.ISO_8859_1))
                .doesNotContain("Exif");
    }
}
