package gaugeglass.cli.pack;

import gaugeglass.cli.walk.VisitFile;
import gaugeglass.engine.pack.PackFiles;
import gaugeglass.engine.reading.Form;
import gaugeglass.engine.reading.NodeReader;
import gaugeglass.engine.text.Mistake;
import gaugeglass.engine.text.Mistakes;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Keys for signing packs (Ed25519): one's own under {@code keys}, those of others that are trusted under {@code trusted},
 * both in the user's own folder.
 */
public final class Keys {
    private static final String PRIVATE = ".private-key";
    private static final String PUBLIC = ".public-key";
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");
    private static final String BEGINS = "gaugeglass pack 1\n";

    private final Path own;
    private final Path trusted;

    /** The keys in a user's own folder. */
    public Keys(Path home) {
        this.own = home.resolve("keys");
        this.trusted = home.resolve("trusted");
    }

    private static Mistakes wrong(String where, String what, String expected) {
        return new Mistakes(List.of(new Mistake(where, 0, 0, "", what, expected, "")));
    }

    private static void named(String name) {
        if (!NAME.matcher(name).matches()) {
            throw wrong("--key", "\"" + name + "\" is no name of a key", "small letters, digits and hyphens");
        }
    }

    /**
     * Makes a key, trusts it here, and gives the file that others need to trust it.
     *
     * @throws Mistakes when there is one of that name
     */
    public Path make(String name) throws IOException {
        named(name);
        Files.createDirectories(own);
        try {
            KeyPair pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
            Path file = own.resolve(name + PRIVATE);
            Files.writeString(file, text(pair.getPrivate().getEncoded()), StandardOpenOption.CREATE_NEW);
            try {
                Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
            } catch (UnsupportedOperationException e) {
                // A file system without such permissions.
            }
            Path open = own.resolve(name + PUBLIC);
            Files.writeString(open, text(pair.getPublic().getEncoded()));
            trust(open);
            return open;
        } catch (FileAlreadyExistsException e) {
            throw wrong("--key", "there is a key called " + name, "another name");
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has Ed25519", e);
        }
    }

    private static String text(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes) + "\n";
    }

    /** Trusts a key from now on. */
    public String trust(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (!name.endsWith(PUBLIC)) {
            throw wrong(file.toString(), "this is no key that can be trusted", "a file ending in " + PUBLIC);
        }
        if (!Files.isRegularFile(file)) {
            throw wrong(file.toString(), "there is no such file", "the file that was handed over");
        }
        String text = Files.readString(file, StandardCharsets.US_ASCII);
        if (open(text).isEmpty()) {
            throw wrong(file.toString(), "this is no Ed25519 public key", "the file that was made with the key");
        }
        Files.createDirectories(trusted);
        Files.writeString(trusted.resolve(name), text);
        return name.substring(0, name.length() - PUBLIC.length());
    }

    private static Optional<PublicKey> open(String text) {
        try {
            byte[] bytes = Base64.getDecoder().decode(text.strip());
            return Optional.of(KeyFactory.getInstance("Ed25519").generatePublic(new X509EncodedKeySpec(bytes)));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Signs a pack's files; the result is the text of its signature file. */
    public String sign(PackFiles files, String name) throws IOException {
        named(name);
        Path file = own.resolve(name + PRIVATE);
        if (!Files.isRegularFile(file)) {
            throw wrong("--key", "there is no key called " + name + " here", "gaugeglass pack key " + name);
        }
        try {
            byte[] bytes = Base64.getDecoder().decode(Files.readString(file).strip());
            PrivateKey key = KeyFactory.getInstance("Ed25519").generatePrivate(new PKCS8EncodedKeySpec(bytes));
            Signature signing = Signature.getInstance("Ed25519");
            signing.initSign(key);
            signing.update(signed(files));
            return "key: " + name + "\nsignature: " + Base64.getEncoder().encodeToString(signing.sign()) + "\n";
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            throw wrong(file.toString(), "this key cannot be used", "a key made by gaugeglass pack key");
        }
    }

    private static byte[] signed(PackFiles files) {
        return (BEGINS + files.hash()).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The name of the trusted key by which a pack is signed.
     *
     * @throws Mistakes when it is not signed, by no key that is trusted here, or was changed since
     */
    public String verify(PackFiles files) {
        String place = files.place(PackFiles.SIGNATURE);
        if (!files.has(PackFiles.SIGNATURE)) {
            throw wrong(
                    files.name(),
                    "it has rules of its own and is not signed, so it is not laid on",
                    "a signature: gaugeglass pack sign");
        }
        List<Mistake> mistakes = new ArrayList<>();
        Form form = Form.of(place, "", NodeReader.read(place, files.text(PackFiles.SIGNATURE), mistakes), mistakes);
        String name = form.text("key");
        String text = form.text("signature");
        form.close();
        byte[] signature;
        try {
            signature = Base64.getDecoder().decode(text);
        } catch (IllegalArgumentException e) {
            form.wrong("signature", "this is no signature", "one made by gaugeglass pack sign", "");
            signature = new byte[0];
        }
        if (!mistakes.isEmpty()) {
            throw new Mistakes(mistakes);
        }
        Path key = trusted.resolve(name + PUBLIC);
        if (!NAME.matcher(name).matches() || !Files.isRegularFile(key)) {
            throw wrong(
                    place,
                    "it is signed by \"" + name + "\", a key that is not trusted here; trusted are " + names(),
                    "gaugeglass pack trust with that key's file, got from somebody you know");
        }
        try {
            Signature checking = Signature.getInstance("Ed25519");
            checking.initVerify(open(Files.readString(key)).orElseThrow());
            checking.update(signed(files));
            if (checking.verify(signature)) {
                return name;
            }
        } catch (GeneralSecurityException e) {
            // As good as no signature.
        } catch (IOException e) {
            throw wrong(key.toString(), "this cannot be read: " + VisitFile.reason(e), "");
        }
        throw wrong(
                place,
                "the pack was changed after it was signed, or was signed by another key of the name " + name,
                "the pack as it was signed, or a new signature");
    }

    private String names() {
        try (Stream<Path> all = Files.list(trusted)) {
            List<String> names = all.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(PUBLIC))
                    .map(name -> name.substring(0, name.length() - PUBLIC.length()))
                    .sorted()
                    .toList();
            return names.isEmpty() ? "none" : String.join(", ", names);
        } catch (IOException e) {
            return "none";
        }
    }
}
