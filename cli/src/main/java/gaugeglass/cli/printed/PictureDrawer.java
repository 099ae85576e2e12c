package gaugeglass.cli.printed;

import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import gaugeglass.cli.picture.Picture;
import gaugeglass.cli.picture.Picture.Area;
import gaugeglass.cli.picture.Picture.Label;
import gaugeglass.cli.picture.Picture.Point;
import gaugeglass.cli.picture.Picture.Stroke;
import java.awt.BasicStroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.w3c.dom.Element;

/**
 * Draws a report's pictures on paper from their shapes, not from the SVG that the page shows: a library that draws any
 * SVG would be larger than everything else here together.
 *
 * <p>Words are drawn as outlines of the report's own font, so that no font of the machine decides how they look; the
 * caption below says the same in words that can be selected.
 */
final class PictureDrawer implements SVGDrawer {
    private final Map<String, Picture> pictures;
    private final TrueTypeFont regular;
    private final TrueTypeFont bold;

    PictureDrawer(List<Picture> pictures) throws IOException {
        this.pictures = pictures.stream().collect(Collectors.toMap(Picture::id, Function.identity()));
        this.regular = font(Pdf.REGULAR);
        this.bold = font(Pdf.BOLD);
    }

    private static TrueTypeFont font(String path) throws IOException {
        try (InputStream in = Pdf.font(path)) {
            return new TTFParser().parse(new RandomAccessReadBuffer(in));
        }
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {}

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {}

    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext css, double width, double height, double dotsPerPixel) {
        Picture picture = pictures.get(svg.getAttribute("id"));
        if (picture == null) {
            throw new IllegalStateException("the page has a drawing that is no picture: " + svg.getAttribute("id"));
        }
        // One point of a drawing is one pixel of the page.
        return new Drawn(picture, dotsPerPixel);
    }

    @Override
    public void close() throws IOException {
        regular.close();
        bold.close();
    }

    private final class Drawn implements SVGImage {
        private final Picture picture;
        private final double scale;

        Drawn(Picture picture, double scale) {
            this.picture = picture;
            this.scale = scale;
        }

        @Override
        public int getIntrinsicWidth() {
            return (int) Math.ceil(picture.width() * scale);
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) Math.ceil(picture.height() * scale);
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            AffineTransform place = new AffineTransform(scale, 0, 0, scale, x, y);
            java.awt.Stroke before = device.getStroke();
            for (Picture.Shape shape : picture.shapes()) {
                if (shape instanceof Stroke stroke) {
                    device.setColor(FSRGBColor.BLACK);
                    device.setStroke(
                            stroke.dashed()
                                    ? new BasicStroke(
                                            (float) (stroke.width() * scale),
                                            BasicStroke.CAP_BUTT,
                                            BasicStroke.JOIN_ROUND,
                                            1,
                                            new float[] {(float) (4 * scale), (float) (3 * scale)},
                                            0)
                                    : new BasicStroke(
                                            (float) (stroke.width() * scale),
                                            BasicStroke.CAP_BUTT,
                                            BasicStroke.JOIN_ROUND));
                    device.draw(path(stroke.points(), false, place));
                } else if (shape instanceof Area area) {
                    Path2D path = path(area.points(), true, place);
                    device.setColor(area.black() ? FSRGBColor.BLACK : WHITE);
                    device.fill(path);
                    device.setColor(FSRGBColor.BLACK);
                    device.setStroke(new BasicStroke((float) (0.5 * scale)));
                    device.draw(path);
                } else if (shape instanceof Label label) {
                    device.setColor(FSRGBColor.BLACK);
                    words(device, label, place);
                }
            }
            device.setStroke(before);
        }
    }

    private static final FSRGBColor WHITE = new FSRGBColor(255, 255, 255);

    private static Path2D path(List<Point> points, boolean closed, AffineTransform place) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x(), points.get(0).y());
        points.subList(1, points.size()).forEach(point -> path.lineTo(point.x(), point.y()));
        if (closed) {
            path.closePath();
        }
        path.transform(place);
        return path;
    }

    private void words(OutputDevice device, Label label, AffineTransform place) {
        TrueTypeFont font = label.bold() ? bold : regular;
        try {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            double size = label.size() / font.getUnitsPerEm();
            int[] letters = label.words().codePoints().toArray();
            double width = 0;
            for (int letter : letters) {
                width += font.getAdvanceWidth(glyphs.getGlyphId(letter)) * size;
            }
            double x = label.at().x()
                    - switch (label.from()) {
                        case START -> 0;
                        case MIDDLE -> width / 2;
                        case END -> width;
                    };
            for (int letter : letters) {
                int id = glyphs.getGlyphId(letter);
                GlyphData glyph = font.getGlyph().getGlyph(id);
                if (glyph != null && glyph.getNumberOfContours() != 0) {
                    AffineTransform there = new AffineTransform(place);
                    there.translate(x, label.at().y());
                    there.scale(size, -size);
                    GeneralPath outline = glyph.getPath();
                    outline.transform(there);
                    device.fill(outline);
                }
                x += font.getAdvanceWidth(id) * size;
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("the report's font cannot be read", e);
        }
    }
}
