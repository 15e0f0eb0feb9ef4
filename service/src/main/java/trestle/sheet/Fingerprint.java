package trestle.sheet;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Tells two requests apart at a glance. */
final class Fingerprint {
    private Fingerprint() {}

    /** SHA-256 of the text in UTF-8, in hexadecimal. */
    static String of(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException none) {
            throw new IllegalStateException("every Java platform has SHA-256", none);
        }
    }
}
