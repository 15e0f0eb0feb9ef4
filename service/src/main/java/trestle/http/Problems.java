package trestle.http;

import io.javalin.http.Context;
import trestle.binding.Json;

/** Writes problem details (RFC 9457). */
final class Problems {
    static final String MEDIA_TYPE = "application/problem+json";

    /** When to come back to a busy service, s. */
    static final String RETRY_AFTER_S = "1";

    /** The kinds of problem, each with its status and its reference. */
    enum Kind {
        MALFORMED_REQUEST(400, "malformed-request", "The request cannot be read"),
        MALFORMED_BODY(400, "malformed-body", "The body cannot be read"),
        MALFORMED_QUERY(400, "malformed-query", "The query cannot be read"),
        INVALID_REQUEST(400, "invalid-request", "The request does not fit the contract"),
        UNAUTHORIZED(401, "unauthorized", "The service asks for a token"),
        NOT_FOUND(404, "not-found", "There is no such resource"),
        METHOD_NOT_ALLOWED(405, "method-not-allowed", "The resource does not take this method"),
        NOT_ACCEPTABLE(406, "not-acceptable", "No representation fits the Accept header"),
        TIMEOUT(408, "timeout", "The request took too long to arrive"),
        TOO_LARGE(413, "too-large", "The body is larger than the service takes"),
        URI_TOO_LONG(414, "uri-too-long", "The address is longer than the service takes"),
        UNSUPPORTED_MEDIA_TYPE(415, "unsupported-media-type", "The body is not of a type that is read here"),
        MISDIRECTED(421, "misdirected", "The service is not asked by this name"),
        IMPOSSIBLE_REQUEST(422, "impossible-request", "The request contradicts itself or physics"),
        HEADERS_TOO_LARGE(431, "headers-too-large", "The headers are larger than the service takes"),
        INTERNAL(500, "internal", "The service failed"),
        HTTP_VERSION(505, "http-version", "The service speaks HTTP/1.1"),
        BUSY(503, "busy", "The service is at its request limit");

        private final int status;
        private final String reference;
        private final String title;

        Kind(int status, String reference, String title) {
            this.status = status;
            this.reference = reference;
            this.title = title;
        }

        int status() {
            return status;
        }

        String reference() {
            return reference;
        }

        String title() {
            return title;
        }

        static Kind of(int status) {
            for (Kind kind : values()) {
                if (kind.status == status) {
                    return kind;
                }
            }
            return status < 500 ? MALFORMED_REQUEST : INTERNAL;
        }
    }

    private Problems() {}

    static void write(Context context, Problem problem) {
        if (problem.kind() == Kind.BUSY) {
            context.header("Retry-After", RETRY_AFTER_S);
        }
        context.status(problem.kind().status).contentType(MEDIA_TYPE).result(Json.bytes(problem.details()));
    }
}
