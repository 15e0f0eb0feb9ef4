package trestle.http;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Collections;
import java.util.regex.Pattern;
import trestle.binding.Json;
import trestle.endpoint.Version;

/**
 * A strong validator (RFC 9110, section 8.8.3). An answer is a pure function of the service's
 * version, the request and the representation, so its tag is known before any work is done.
 *
 * @param value the tag in its quotes
 */
record EntityTag(String value) {
    private static final Pattern TAG = Pattern.compile("\"[^\"]*\"");
    private static final int BYTES = 16;

    /**
     * The tag of an answer.
     *
     * @param request the bound request, which is the same however the caller wrote it
     * @param representation all else that the bytes of the answer depend on
     */
    static EntityTag of(Object request, String... representation) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            add(digest, Version.current().getBytes(StandardCharsets.UTF_8));
            for (String part : representation) {
                add(digest, part.getBytes(StandardCharsets.UTF_8));
            }
            add(digest, Json.exactBytes(request));
            byte[] start = Arrays.copyOf(digest.digest(), BYTES);
            String text = Base64.getUrlEncoder().withoutPadding().encodeToString(start);
            return new EntityTag('"' + text + '"');
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException("every Java has SHA-256", absent);
        }
    }

    private static void add(MessageDigest digest, byte[] part) {
        digest.update(part);
        digest.update((byte) 0);
    }

    /** Whether the caller holds the answer already (RFC 9110, section 13.1.2). */
    boolean held(Context context) {
        return Collections.list(context.req().getHeaders("If-None-Match")).stream()
                .anyMatch(header -> header.strip().equals("*") || lists(header));
    }

    private boolean lists(String header) {
        return TAG.matcher(header).results().anyMatch(tag -> tag.group().equals(value));
    }
}
