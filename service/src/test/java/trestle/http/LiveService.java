package trestle.http;

import static io.restassured.RestAssured.given;

import com.atlassian.oai.validator.OpenApiInteractionValidator;
import com.atlassian.oai.validator.report.LevelResolver;
import com.atlassian.oai.validator.report.ValidationReport;
import com.atlassian.oai.validator.restassured.OpenApiValidationFilter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.builder.RequestSpecBuilder;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/**
 * The real service on a free port, started once for all HTTP tests. Every exchange is held against
 * the OpenAPI document: answers always, requests where a test does not mean to break the contract.
 */
public final class LiveService {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Service SERVICE = Service.start(Settings.onAFreePort());
    private static final String CONTRACT = contract();
    private static final OpenApiValidationFilter BOTH_WAYS = filter(ValidationReport.Level.ERROR);
    private static final OpenApiValidationFilter ANSWER_ONLY = filter(ValidationReport.Level.IGNORE);

    /** An address of a calculation, and of nothing below it. */
    private static final Pattern CALCULATION = Pattern.compile("/v1/[a-z-]+([?].*)?$");

    private LiveService() {}

    /** A request that keeps the contract, with both ways checked. */
    public static RequestSpecification lawful() {
        return given().spec(base()).filter(BOTH_WAYS);
    }

    /** A request that breaks the contract on purpose, with the answer checked. */
    public static RequestSpecification unlawful() {
        return given().spec(base()).filter(ANSWER_ONLY);
    }

    /** A request to a service of the test's own, with the answer checked. */
    static RequestSpecification held(RequestSpecification request) {
        return request.filter(ANSWER_ONLY);
    }

    /** A request outside the contract's paths and methods. */
    public static RequestSpecification unchecked() {
        return given().spec(base());
    }

    /** A request that keeps the contract and may leave things open: estimates and bands as callers get them. */
    public static RequestSpecification open() {
        return given().spec(plain()).filter(BOTH_WAYS);
    }

    /** Where the service listens. */
    public static String address() {
        return "http://127.0.0.1:" + SERVICE.port();
    }

    /** The example request of a calculation, as the service serves it. */
    public static JsonNode example(String calculation) {
        try {
            return MAPPER.readTree(lawful().get("/v1/" + calculation + "/example")
                    .then()
                    .statusCode(200)
                    .extract()
                    .asByteArray());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * A calculation's example with one field set, added or, for {@code null}, taken out.
     *
     * @param calculation whose example
     * @param pointer JSON Pointer of the field
     * @param json its new value as JSON, or null
     * @return the changed request
     */
    public static ObjectNode changed(String calculation, String pointer, String json) {
        return change((ObjectNode) example(calculation), pointer, json);
    }

    /** The same on a request at hand. */
    public static ObjectNode change(ObjectNode request, String pointer, String json) {
        int cut = pointer.lastIndexOf('/');
        JsonNode parent = request.at(pointer.substring(0, cut));
        String name = pointer.substring(cut + 1);
        try {
            if (parent instanceof ArrayNode list) {
                list.set(Integer.parseInt(name), MAPPER.readTree(json));
            } else if (json == null) {
                ((ObjectNode) parent).remove(name);
            } else {
                ((ObjectNode) parent).set(name, MAPPER.readTree(json));
            }
        } catch (IOException noJson) {
            throw new UncheckedIOException(noJson);
        }
        return request;
    }

    /** Posts a request that keeps the contract and returns the answer. */
    public static ValidatableResponse answer(String calculation, ObjectNode request) {
        return lawful().body(request.toString())
                .post("/v1/" + calculation)
                .then()
                .statusCode(200);
    }

    /** Posts a request and expects it to be refused. */
    public static ValidatableResponse refused(String calculation, int status, ObjectNode request) {
        return unlawful()
                .body(request.toString())
                .post("/v1/" + calculation)
                .then()
                .statusCode(status)
                .contentType("application/problem+json");
    }

    /** Most tests say all that there is to know, and hold numbers: nothing is guessed for them. */
    private static RequestSpecification base() {
        return plain().filter((request, response, context) -> {
            if (asksAnything(request)) {
                request.queryParam("estimates", "false");
                request.queryParam("bands", "false");
            }
            return context.next(request, response);
        });
    }

    private static boolean asksAnything(FilterableRequestSpecification request) {
        String uri = request.getURI();
        return CALCULATION.matcher(uri).find() && !uri.contains("estimates=") && !uri.contains("bands=");
    }

    private static RequestSpecification plain() {
        return new RequestSpecBuilder()
                .setBaseUri(address())
                .setConfig(RestAssuredConfig.config()
                        .encoderConfig(EncoderConfig.encoderConfig()
                                .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
                .setContentType(ContentType.JSON.withCharset(StandardCharsets.UTF_8))
                .build();
    }

    private static OpenApiValidationFilter filter(ValidationReport.Level requests) {
        return new OpenApiValidationFilter(OpenApiInteractionValidator.createForInlineApiSpecification(CONTRACT)
                .withLevelResolver(LevelResolver.create()
                        .withLevel("validation.request", requests)
                        .withLevel(
                                // The fields of a GET are one exploded object
                                // of the contract; the validator knows single
                                // parameters only. The service itself refuses
                                // what is no field.
                                "validation.request.parameter.query.unexpected", ValidationReport.Level.IGNORE)
                        .withLevel(
                                // Answers are open; without this the validator
                                // closes each part of an allOf by itself.
                                "validation.schema.additionalProperties", ValidationReport.Level.IGNORE)
                        .build())
                .build());
    }

    private static String contract() {
        try (InputStream in = LiveService.class.getResourceAsStream("/trestle/api/openapi.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
