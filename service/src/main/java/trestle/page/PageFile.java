package trestle.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A file of a page, as it lies in the jar. */
final class PageFile {
    private static final Map<String, String> MEDIA_TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "txt", "text/plain; charset=utf-8");

    /** Half of the digest tells any two of a handful of files apart. */
    private static final int TAG_BYTES = 16;

    private final String mediaType;
    private final byte[] content;
    private final String tag;

    private PageFile(String mediaType, byte[] content) {
        this.mediaType = mediaType;
        this.content = content;
        // Weak: a server that compresses sends other bytes of the same content.
        this.tag = "W/\"" + digest(content) + "\"";
    }

    /**
     * Reads a file.
     *
     * @param path its path under the folder of the pages
     * @return the file, if there is one of that path and of a type that is served
     */
    static Optional<PageFile> read(String path) {
        String mediaType = MEDIA_TYPES.get(path.substring(path.lastIndexOf('.') + 1));
        if (mediaType == null) {
            return Optional.empty();
        }
        try (InputStream in = PageFile.class.getResourceAsStream("/trestle/pages/" + path)) {
            return in == null ? Optional.empty() : Optional.of(new PageFile(mediaType, in.readAllBytes()));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    String mediaType() {
        return mediaType;
    }

    byte[] content() {
        return content.clone();
    }

    String tag() {
        return tag;
    }

    /** Whether a caller who names these tags has this very content. */
    boolean isHeldBy(String ifNoneMatch) {
        List<String> held =
                Arrays.stream(ifNoneMatch.split(",")).map(String::strip).toList();
        return held.contains("*") || held.contains(tag) || held.contains(tag.substring("W/".length()));
    }

    private static String digest(byte[] content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            return HexFormat.of().formatHex(digest, 0, TAG_BYTES);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
