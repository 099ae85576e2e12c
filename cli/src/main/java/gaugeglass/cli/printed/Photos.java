package gaugeglass.cli.printed;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.AffineTransformOp;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * The photos that an inspection names, taken from its own folder and below, and made small enough to send.
 *
 * <p>Each is turned upright as its camera noted and written anew, which leaves out whatever else the camera noted, such
 * as the place.
 */
final class Photos {
    /** Larger files are not read. */
    private static final long MOST_BYTES = 25L << 20;

    /** Pictures of more points are not unpacked: a small file can hold one that fills any memory. */
    private static final long MOST_POINTS = 60_000_000;

    private static final int MOST_PHOTOS = 60;

    /** The longer side as embedded; on paper that is more than 200 points an inch at the size shown. */
    private static final int LONGEST_SIDE = 1400;

    private static final float QUALITY = 0.8f;

    private final Optional<Path> folder;
    private final Map<String, Photo> known = new HashMap<>();
    private int taken;

    /**
     * Takes photos from a folder.
     *
     * @param folder the inspection's; empty where it has none, as it came from standard input
     */
    Photos(Optional<Path> folder) {
        this.folder = folder;
    }

    /**
     * A photo that an inspection names.
     *
     * @param name as named
     * @param caption what it belongs to
     * @param data it as a data address; empty where it is missing
     * @param missing why it is missing; empty where it is there
     */
    record Photo(String name, String caption, String data, String missing) {}

    Photo of(String name, String caption) {
        Photo photo = known.computeIfAbsent(name, this::read);
        return new Photo(name, caption, photo.data(), photo.missing());
    }

    private Photo read(String name) {
        try {
            return new Photo(name, "", data(file(name)), "");
        } catch (Missing e) {
            return new Photo(name, "", "", String.valueOf(e.getMessage()));
        } catch (IOException e) {
            return new Photo(name, "", "", "it could not be read");
        }
    }

    /** Tells why a photo is not shown. */
    private static final class Missing extends Exception {
        private static final long serialVersionUID = 1L;

        Missing(String why) {
            super(why, null, false, false);
        }
    }

    private Path file(String name) throws Missing, IOException {
        if (folder.isEmpty()) {
            throw new Missing("an inspection from standard input has no folder to find it in");
        }
        Path home = folder.get().toRealPath();
        Path path;
        try {
            path = home.resolve(name).normalize();
        } catch (InvalidPathException e) {
            throw new Missing("this cannot be the name of a file");
        }
        String outside = "it does not lie in the inspection's folder";
        if (Path.of(name).isAbsolute() || !path.startsWith(home)) {
            throw new Missing(outside);
        }
        if (!Files.isRegularFile(path)) {
            throw new Missing("there is no such file beside the inspection");
        }
        // A link inside the folder may still lead out of it.
        if (!path.toRealPath().startsWith(home)) {
            throw new Missing(outside);
        }
        if (Files.size(path) > MOST_BYTES) {
            throw new Missing("it is larger than " + (MOST_BYTES >> 20) + " MB");
        }
        if (++taken > MOST_PHOTOS) {
            throw new Missing("a report shows at most " + MOST_PHOTOS + " photos");
        }
        return path;
    }

    private static String data(Path file) throws Missing, IOException {
        byte[] bytes = Files.readAllBytes(file);
        BufferedImage image = unpacked(bytes);
        BufferedImage shown = upright(image, Orientation.of(bytes));
        return "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(packed(shown));
    }

    private static BufferedImage unpacked(byte[] bytes) throws Missing, IOException {
        String unfit = "it is no JPEG or PNG picture, or a damaged one";
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new Missing(unfit);
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_POINTS) {
                    throw new Missing("it has more than " + MOST_POINTS / 1_000_000 + " million points");
                }
                return reader.read(0);
            } catch (IOException | RuntimeException e) {
                // Damaged pictures make the readers throw whatever they like.
                throw new Missing(unfit);
            } finally {
                reader.dispose();
            }
        }
    }

    private static BufferedImage upright(BufferedImage image, int orientation) {
        double scale = Math.min(1, LONGEST_SIDE / (double) Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
        BufferedImage small = white(width, height);
        Graphics2D graphics = small.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(image, 0, 0, width, height, null);
        graphics.dispose();
        if (orientation == 1) {
            return small;
        }
        BufferedImage turned = orientation >= 5 ? white(height, width) : white(width, height);
        AffineTransform turn = Orientation.turn(orientation, width, height);
        new AffineTransformOp(turn, AffineTransformOp.TYPE_NEAREST_NEIGHBOR).filter(small, turned);
        return turned;
    }

    private static BufferedImage white(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(java.awt.Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.dispose();
        return image;
    }

    private static byte[] packed(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
            writer.setOutput(stream);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
