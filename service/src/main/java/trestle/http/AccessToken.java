package trestle.http;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What a caller has to know to be answered, where the service asks for it. It is never printed: no text is made of it
 * but the header that carries it.
 *
 * @see "RFC 6750, The OAuth 2.0 Authorization Framework: Bearer Token Usage, section 2.1"
 */
public final class AccessToken {
    /** The header's scheme. */
    static final String SCHEME = "Bearer";

    /** The characters that the RFC lets a token have. Fewer than 16 can be tried out. */
    private static final Pattern FORM = Pattern.compile("(?=.{16,512}$)[A-Za-z0-9._~+/-]+=*");

    private final String value;
    private final byte[] digest;

    private AccessToken(String value) {
        this.value = value;
        digest = digest(value);
    }

    /**
     * A token.
     *
     * @param value its characters
     * @return the token
     * @throws IllegalArgumentException where no header could carry it or it is too short; without the characters
     */
    public static AccessToken of(String value) {
        if (!FORM.matcher(value).matches()) {
            throw new IllegalArgumentException(
                    "the token must have 16 to 512 characters, letters, digits and -._~+/ with = at its end,"
                            + " and nothing else");
        }
        return new AccessToken(value);
    }

    /**
     * The header by which a caller shows that it knows the token.
     *
     * @return value of {@code Authorization}
     */
    public String authorization() {
        return SCHEME + " " + value;
    }

    /**
     * Whether a caller knows the token. What it sent is digested first, so that the time that comparing takes tells
     * neither how much of it is right nor how long the right one is.
     *
     * @param authorization value of the header; null where there is none
     */
    boolean isIn(String authorization) {
        if (authorization == null) {
            return false;
        }
        String[] words = authorization.strip().split(" +", 2);
        return words.length == 2
                && words[0].toLowerCase(Locale.ROOT).equals(SCHEME.toLowerCase(Locale.ROOT))
                && MessageDigest.isEqual(digest(words[1]), digest);
    }

    private static byte[] digest(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
