package gaugeglass.cli.sheet;

import gaugeglass.checklists.Checklist;
import gaugeglass.engine.Rulebook;
import gaugeglass.engine.reading.NodeWriter;
import gaugeglass.engine.text.Digest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;

/**
 * A checklist as one HTML file that asks its questions by itself, on a phone without a network.
 *
 * <p>Its script is written by hand, but for the reader of YAML, and the same for every checklist; what differs is data beside
 * it. Its policy lets it run that one script and style, and reach nothing else. The same checklist and rulebook give the same bytes.
 */
public final class PhoneSheet {
    private PhoneSheet() {}

    /**
     * Writes the page.
     *
     * @param stops the answers that forbid firing by themselves
     * @param defers the line about who comes before this list
     */
    public static String html(Rulebook rulebook, SingleAnswerStops stops, Checklist checklist, String defers) {
        String style = resource("phone.css");
        String script = readerOfYaml() + "(() => {\n\"use strict\";\n" + resource("quantities.js")
                + resource("visit.js") + resource("screens.js") + "})();\n";
        String data = NodeWriter.line(new PhoneData(rulebook, stops, checklist).all(defers));
        String policy = "default-src 'none'; script-src " + digest(script) + "; style-src " + digest(style)
                + "; base-uri 'none'; form-action 'none'";
        return resource("phone.html")
                .replace("{policy}", policy)
                .replace("{title}", escaped(checklist.title()))
                .replace("{style}", style)
                .replace("{data}", harmless(data))
                .replace("{script}", script);
    }

    /** A library with its licence; what no page may hold as it is stands in it as an escape. */
    private static String readerOfYaml() {
        StringBuilder script =
                new StringBuilder("/* " + resource("js-yaml/LICENSE").strip() + " */\n");
        resource("js-yaml/js-yaml.min.js").strip().chars().forEach(one -> {
            if (Character.isISOControl(one) && one != '\n') {
                script.append(String.format(Locale.ROOT, "\\u%04x", one));
            } else {
                script.append((char) one);
            }
        });
        return script.append('\n').toString();
    }

    /** JSON in which no mark can be read that would end the data early. */
    private static String harmless(String json) {
        return json.replace("<", "\\u003c")
                .replace(">", "\\u003e")
                .replace("&", "\\u0026")
                .replace("\u2028", "\\u2028")
                .replace("\u2029", "\\u2029");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static String digest(String text) {
        return "'sha256-"
                + Base64.getEncoder().encodeToString(new Digest().add(text).bytes()) + "'";
    }

    private static String resource(String name) {
        try (InputStream in = PhoneSheet.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("there is no " + name + " in this program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }
}
