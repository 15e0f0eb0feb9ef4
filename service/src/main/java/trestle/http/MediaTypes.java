package trestle.http;

import io.javalin.http.Context;
import java.util.Locale;

/** Which media types a request brings and takes. */
final class MediaTypes {
    private MediaTypes() {}

    static void requireJsonBody(Context context) {
        String type = context.contentType();
        if (type == null || !bare(type).matches("application/(.+\\+)?json")) {
            throw new Refusal(
                    Problems.Kind.UNSUPPORTED_MEDIA_TYPE,
                    "send the request as JSON with the header Content-Type: application/json");
        }
    }

    static void requireJsonAccepted(Context context) {
        String accept = context.header("Accept");
        if (accept == null) {
            return;
        }
        for (String range : accept.split(",")) {
            String bare = bare(range);
            boolean refused = range.replace(" ", "").matches(".*;q=0(\\.0*)?$");
            if (!refused
                    && (bare.equals("*/*")
                            || bare.equals("application/*")
                            || bare.equals("application/json"))) {
                return;
            }
        }
        throw new Refusal(Problems.Kind.NOT_ACCEPTABLE, "the answer is application/json");
    }

    private static String bare(String type) {
        return type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    }
}
