package trestle.page;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The pages for people: the landing page, the docs and the dashboard. All of them are in the jar,
 * are read when they are first asked for, and fetch nothing from elsewhere.
 */
public final class Pages {
    /**
     * What a page may load: what the service serves. The docs set style attributes; drawings and
     * icons come as data and blobs.
     */
    private static final String POLICY =
            "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; object-src 'none';"
                    + " base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

    /** Flat folders of plain names: no name leads out of its folder. */
    private static final Pattern NAME = Pattern.compile("[a-z][a-z-]*(\\.[A-Za-z]+){1,3}");

    private final Landing landing = new Landing();
    private final Map<String, PageFile> files = new ConcurrentHashMap<>();
    private final Function<String, RuntimeException> absent;

    /**
     * The pages.
     *
     * @param absent makes what is thrown for a page that does not exist, of a sentence that says so
     */
    public Pages(Function<String, RuntimeException> absent) {
        this.absent = absent;
    }

    /**
     * Registers the pages.
     *
     * @param reading takes a path and what answers a GET of it
     */
    public void register(BiConsumer<String, Handler> reading) {
        reading.accept("/", this::welcome);
        folder("docs", reading);
        folder("dashboard", reading);
    }

    private void folder(String name, BiConsumer<String, Handler> reading) {
        reading.accept("/" + name, context -> {
            if (context.path().endsWith("/")) {
                send(context, name + "/index.html");
            } else {
                // Relative: the service may stand behind a proxy, under another path.
                context.redirect(name + "/", HttpStatus.PERMANENT_REDIRECT);
                context.contentType("text/plain");
            }
        });
        reading.accept("/" + name + "/{file}", context -> send(context, name + "/" + context.pathParam("file")));
    }

    private void welcome(Context context) {
        guard(context);
        context.header("Cache-Control", "no-cache")
                .contentType("text/html; charset=utf-8")
                .result(landing.html(Optional.ofNullable(context.host())));
    }

    private void send(Context context, String path) {
        PageFile file = file(path).orElseThrow(() -> absent.apply("there is no such page"));
        guard(context);
        context.header("Cache-Control", "no-cache").header("ETag", file.tag());
        String held = context.header("If-None-Match");
        if (held != null && file.isHeldBy(held)) {
            context.status(HttpStatus.NOT_MODIFIED);
        } else {
            context.contentType(file.mediaType()).result(file.content());
        }
    }

    /** Only what exists is kept, so that nobody fills the memory with names. */
    private Optional<PageFile> file(String path) {
        String name = path.substring(path.indexOf('/') + 1);
        if (!NAME.matcher(name).matches()) {
            return Optional.empty();
        }
        Optional<PageFile> known = Optional.ofNullable(files.get(path));
        if (known.isPresent()) {
            return known;
        }
        Optional<PageFile> read = PageFile.read(path);
        read.ifPresent(file -> files.put(path, file));
        return read;
    }

    private static void guard(Context context) {
        context.header("Content-Security-Policy", POLICY).header("Referrer-Policy", "no-referrer");
    }
}
