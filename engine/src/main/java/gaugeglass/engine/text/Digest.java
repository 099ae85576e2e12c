package gaugeglass.engine.text;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A SHA-256 digest (FIPS 180-4) of some texts and bytes, one after the other. */
public final class Digest {
    private final MessageDigest digest;

    public Digest() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Takes in a text, as UTF-8. */
    public Digest add(String text) {
        return add(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Takes in some bytes. */
    public Digest add(byte[] bytes) {
        digest.update(bytes);
        return this;
    }

    /** What it comes to, 32 bytes; it begins anew afterwards. */
    public byte[] bytes() {
        return digest.digest();
    }

    /** The same as 64 hexadecimal digits. */
    public String hex() {
        return HexFormat.of().formatHex(bytes());
    }
}
