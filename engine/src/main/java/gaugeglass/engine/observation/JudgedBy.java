package gaugeglass.engine.observation;

import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What an inspection was judged by when it was made, as its file records it.
 *
 * @param rulebook the rulebook's name; empty where nothing is recorded
 * @param version its version
 * @param hash the digest of its files
 * @param packs what was laid over it, lowest first
 */
public record JudgedBy(String rulebook, String version, String hash, List<Pack> packs) {
    /** For a file that records nothing. */
    public static final JudgedBy NOT_RECORDED = new JudgedBy("", "", "", List.of());

    /** The key in a file. */
    public static final String KEY = "judged-by";

    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");

    public JudgedBy {
        packs = List.copyOf(packs);
    }

    /**
     * A pack that was laid over the rulebook.
     *
     * @param name its short name
     * @param version its version
     * @param hash the digest of its files
     */
    public record Pack(String name, String version, String hash) {}

    /** Whether anything is recorded. */
    public boolean isRecorded() {
        return !rulebook.isEmpty();
    }

    /**
     * What a file records, of which nothing else is read: its answers may be such as only those packs know.
     *
     * @throws Mistakes when the text cannot be taken apart, or the record is spoiled
     */
    public static JudgedBy read(String file, String text) {
        List<Mistake> mistakes = new ArrayList<>();
        Form form = Form.of(file, "", NodeReader.read(file, text, mistakes), mistakes);
        JudgedBy judgedBy = form.has(KEY) ? of(form.form(KEY)) : NOT_RECORDED;
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        return judgedBy;
    }

    static JudgedBy of(Form form) {
        String rulebook = form.text("rulebook");
        String version = form.text("version");
        String hash = digest(form);
        List<Pack> packs = new ArrayList<>();
        for (Form one : form.forms("packs")) {
            packs.add(new Pack(one.text("pack"), one.text("version"), digest(one)));
            one.close();
        }
        form.close();
        return new JudgedBy(rulebook, version, hash, packs);
    }

    private static String digest(Form form) {
        String digest = form.text("digest");
        if (!digest.isEmpty() && !DIGEST.matcher(digest).matches()) {
            form.wrong("digest", "this is no digest", "64 digits and letters from a to f, as they were written", "");
        }
        return digest;
    }

    /** As keys and texts. */
    Map<String, Object> write() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("rulebook", rulebook);
        all.put("version", version);
        all.put("digest", hash);
        List<Object> laidOn = new ArrayList<>();
        for (Pack pack : packs) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("pack", pack.name());
            one.put("version", pack.version());
            one.put("digest", pack.hash());
            laidOn.add(one);
        }
        if (!laidOn.isEmpty()) {
            all.put("packs", laidOn);
        }
        return all;
    }
}
