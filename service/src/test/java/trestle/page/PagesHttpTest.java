package trestle.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.endpoint.ReferenceTable;
import trestle.http.LiveService;

/** The landing page, the docs and the dashboard, as the service serves them. */
class PagesHttpTest {
    private static final Pattern LOADED =
            Pattern.compile("(?:src|href)=\"([a-z-]+\\.(?:js|css))\"|from '\\./([a-z-]+\\.js)'");

    private static Response get(String path) {
        return LiveService.unchecked().redirects().follow(false).get(path);
    }

    @Test
    void theLandingPageHasALineToTypeForEveryCalculation() {
        String page = get("/").then().statusCode(200).extract().asString();
        for (Calculation<?, ?, ?, ?> calculation : Catalogue.calculations()) {
            String url = LiveService.address() + "/v1/" + calculation.name();
            assertThat(page).containsSubsequence("curl -s " + url + "/example |", "--data-binary @- " + url);
        }
        for (ReferenceTable table : Catalogue.tables()) {
            assertThat(page).contains("href=\"./v1/reference/" + table.name() + "\"");
        }
        assertThat(page).doesNotContain("{{", "<!-- each");
    }

    @ParameterizedTest
    @ValueSource(strings = {"dashboard/", "docs/", "openapi.json", "openapi.yaml", "health/live"})
    void theLandingPageLeadsToWhatIsThere(String place) {
        assertThat(place.startsWith("health") || get("/").asString().contains(place))
                .isTrue();
        get("/" + place).then().statusCode(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\"><script>alert(1)</script>", "a/b", "x y", "host:99999999"})
    void aHostThatIsNoneIsNotShown(String host) {
        LiveService.unchecked()
                .header("X-Forwarded-Host", host)
                .get("/")
                .then()
                .body(containsString("curl -s " + LiveService.address() + "/v1/"));
        assertThat(new Landing().html(Optional.of(host)))
                .doesNotContain(host)
                .contains("curl -s http://127.0.0.1:8080/v1/mass-balance/example");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/docs/", "/dashboard/", "/docs/docs.js", "/dashboard/style.css"})
    void aPageMayLoadOnlyWhatTheServiceServes(String path) {
        get(path)
                .then()
                .statusCode(200)
                .header("Content-Security-Policy", startsWith("default-src 'self'; style-src 'self' 'unsafe-inline';"))
                .header("X-Content-Type-Options", "nosniff")
                .header("Cache-Control", "no-cache");
    }

    @ParameterizedTest
    @ValueSource(strings = {"docs", "dashboard"})
    void whatAPageLoadsIsServedAndNamesNoOtherHost(String folder) {
        List<String> toDo = new ArrayList<>(List.of("index.html"));
        for (int done = 0; done < toDo.size(); done++) {
            String file = toDo.get(done);
            String text = get("/" + folder + "/" + file)
                    .then()
                    .statusCode(200)
                    .extract()
                    .asString();
            if (!file.startsWith("swagger-ui")) {
                assertThat(text.replace("http://www.w3.org/2000/svg", ""))
                        .as(file)
                        .doesNotContainPattern("https?://[a-z0-9]");
                Matcher loaded = LOADED.matcher(text);
                while (loaded.find()) {
                    String next = loaded.group(1) == null ? loaded.group(2) : loaded.group(1);
                    if (!toDo.contains(next)) {
                        toDo.add(next);
                    }
                }
            }
        }
        assertThat(toDo).hasSizeGreaterThanOrEqualTo(4);
    }

    @Test
    void theDocsAreSwaggerUiOnThisContract() {
        get("/docs/swagger-ui-bundle.js")
                .then()
                .statusCode(200)
                .contentType(startsWith("text/javascript"))
                .body(containsString("SwaggerUIBundle"));
        get("/docs/docs.js")
                .then()
                .body(containsString("'../openapi.json'"))
                .body(containsString("validatorUrl: null"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"docs", "dashboard"})
    void aFolderWithoutItsSlashLeadsThereWhateverIsInFront(String folder) {
        get("/" + folder).then().statusCode(308).header("Location", equalTo(folder + "/"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/docs/no-such-page.html",
                "/docs/..%2flanding.html",
                "/docs/%2e%2e%2fversion.properties",
                "/docs/landing.html",
                "/docs/Docs.js",
                "/docs/a/b.js",
                "/dashboard/README.md",
                "/dashboard/screenshot-light.png"
            })
    void whatIsNoPageIsAProblem(String path) {
        LiveService.unchecked()
                .urlEncodingEnabled(false)
                .get(path)
                .then()
                .statusCode(404)
                .contentType(startsWith("application/problem+json"))
                .body("type", equalTo("/problems/not-found"));
    }

    @Test
    void aPageThatIsHeldIsNotSentAgain() {
        String tag = get("/docs/swagger-ui.css").then().extract().header("ETag");
        for (String held : List.of(tag, "\"other\", " + tag, tag.replace("W/", ""), "*")) {
            LiveService.unchecked()
                    .header("If-None-Match", held)
                    .get("/docs/swagger-ui.css")
                    .then()
                    .statusCode(304)
                    .header("ETag", tag)
                    .body(equalTo(""));
        }
        LiveService.unchecked()
                .header("If-None-Match", "W/\"other\"")
                .get("/docs/swagger-ui.css")
                .then()
                .statusCode(200);
    }
}
