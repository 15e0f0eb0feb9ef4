package trestle.http;

import static io.restassured.RestAssured.given;

import com.atlassian.oai.validator.OpenApiInteractionValidator;
import com.atlassian.oai.validator.report.LevelResolver;
import com.atlassian.oai.validator.report.ValidationReport;
import com.atlassian.oai.validator.restassured.OpenApiValidationFilter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.builder.RequestSpecBuilder;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The real service on a free port, started once for all HTTP tests. Every exchange is held against
 * the OpenAPI document: answers always, requests where a test does not mean to break the contract.
 */
public final class LiveService {
    private static final Service SERVICE = Service.start(Settings.onAFreePort());
    private static final String CONTRACT = contract();
    private static final OpenApiValidationFilter BOTH_WAYS = filter(ValidationReport.Level.ERROR);
    private static final OpenApiValidationFilter ANSWER_ONLY =
            filter(ValidationReport.Level.IGNORE);

    private LiveService() {}

    /** A request that keeps the contract, with both ways checked. */
    public static RequestSpecification lawful() {
        return given().spec(base()).filter(BOTH_WAYS);
    }

    /** A request that breaks the contract on purpose, with the answer checked. */
    public static RequestSpecification unlawful() {
        return given().spec(base()).filter(ANSWER_ONLY);
    }

    /** A request outside the contract's paths and methods. */
    public static RequestSpecification unchecked() {
        return given().spec(base());
    }

    /** Where the service listens. */
    public static String address() {
        return "http://127.0.0.1:" + SERVICE.port();
    }

    /** The example request of a calculation, as the service serves it. */
    public static JsonNode example(String calculation) {
        try {
            return new ObjectMapper()
                    .readTree(
                            lawful().get("/v1/" + calculation + "/example")
                                    .then()
                                    .statusCode(200)
                                    .extract()
                                    .asByteArray());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static RequestSpecification base() {
        return new RequestSpecBuilder()
                .setBaseUri(address())
                .setContentType(ContentType.JSON.withCharset(StandardCharsets.UTF_8))
                .build();
    }

    private static OpenApiValidationFilter filter(ValidationReport.Level requests) {
        return new OpenApiValidationFilter(
                OpenApiInteractionValidator.createForInlineApiSpecification(CONTRACT)
                        .withLevelResolver(
                                LevelResolver.create()
                                        .withLevel("validation.request", requests)
                                        .withLevel(
                                                // Answers are open; without this the validator
                                                // closes each part of an allOf by itself.
                                                "validation.schema.additionalProperties",
                                                ValidationReport.Level.IGNORE)
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
