package gaugeglass.cli.printed;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import gaugeglass.cli.picture.Picture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.zip.CRC32;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A report's page laid out on sheets. It is written as XML too, so that no second reading of HTML can differ from it. */
final class Pdf {
    private static final String FAMILY = "Liberation Sans";
    static final String REGULAR = "/liberation/LiberationSans-Regular.ttf";
    static final String BOLD = "/liberation/LiberationSans-Bold.ttf";
    private static final int NORMAL_WEIGHT = 400;
    private static final int BOLD_WEIGHT = 700;

    private Pdf() {}

    /**
     * Lays out a page.
     *
     * @param html well-formed
     * @param paperCss what holds on paper only
     * @param pictures those that its drawings stand for
     * @param date noted in the file as the day it was made, as nothing else in it depends on the clock
     */
    static byte[] of(String html, String paperCss, List<Picture> pictures, LocalDate date) throws IOException {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(document(html, paperCss), "");
        builder.useFont(() -> font(REGULAR), FAMILY, NORMAL_WEIGHT, FontStyle.NORMAL, true);
        builder.useFont(() -> font(BOLD), FAMILY, BOLD_WEIGHT, FontStyle.NORMAL, true);
        builder.useExternalResourceAccessControl(
                (address, type) -> address.startsWith("data:"),
                ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useSVGDrawer(new PictureDrawer(pictures));
        builder.withProducer("gaugeglass");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            PDDocument pdf = renderer.createPDFKeepOpen();
            GregorianCalendar day = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
            pdf.getDocumentInformation().setCreationDate(day);
            pdf.getDocumentInformation().setModificationDate(day);
            CRC32 sum = new CRC32();
            sum.update(html.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            pdf.setDocumentId(sum.getValue());
            pdf.save(out);
            pdf.close();
        }
        return out.toByteArray();
    }

    static InputStream font(String path) {
        InputStream in = Pdf.class.getResourceAsStream(path);
        if (in == null) {
            throw new IllegalStateException("there is no " + path + " in this program");
        }
        return in;
    }

    private static Document document(String html, String paperCss) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
            Element style = document.createElement("style");
            style.appendChild(document.createTextNode(paperCss));
            document.getElementsByTagName("head").item(0).appendChild(style);
            ((Element) document.getElementsByTagName("div").item(0)).removeAttribute("hidden");
            return document;
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("the report's page is not well-formed", e);
        }
    }
}
