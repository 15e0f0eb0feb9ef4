package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.WebElement;
import trestle.http.Admission;
import trestle.http.Service;
import trestle.http.Settings;

/** Pages of a team's own web server that ask the service, in a real browser. */
class EmbeddingTest {
    private final Browser browser = Browser.shared();

    @ParameterizedTest
    @CsvSource({"1280, light", "1280, dark", "360, light", "360, dark"})
    void theBoardShowsFiguresAndTheirNumbers(int width, String scheme) {
        onTheBoard(true, () -> {
            browser.prefers(scheme);
            browser.size(width, 900);
            untilNumbers();
            assertThat(browser.all(".card img")).hasSize(2);
            assertThat(browser.<Long>run("return document.documentElement.scrollWidth"))
                    .isLessThanOrEqualTo(width);
            assertThat(browser.find(".aid").isDisplayed()).isTrue();
            assertThat(browser.find(".checked").getText())
                    .matches("Checks: \\d+ passed, \\d+ not passed, \\d+ not judged\\.");
            browser.screenshot("embedding-" + scheme + "-" + width);
        });
    }

    @Test
    void theWeatherChangesFigureAndNumber() {
        onTheBoard(true, () -> {
            untilNumbers();
            double mild = number("/usable_energy_wh");
            double mildHours = number("/best_endurance/endurance_h");

            browser.run("""
                            const input = document.querySelector('[data-sets^="ambient_c"]');
                            input.value = '-10';
                            input.dispatchEvent(new Event('change', { bubbles: true }))
                            """);

            browser.until("the cold counts", () -> number("/usable_energy_wh") < mild - 5);
            browser.until(
                    "what the pack gives less is not flown longer",
                    () -> number("/best_endurance/endurance_h") < mildHours);
            assertThat(browser.all(".card img"))
                    .as("the pack of the flight is as cold")
                    .allSatisfy(
                            figure -> assertThat(figure.getDomProperty("src")).contains("ambient_c=-10&"));
        });
    }

    @Test
    void withoutLeaveThereAreFiguresButNoNumbers() {
        onTheBoard(false, () -> {
            browser.until(
                    "it is said in words",
                    () -> browser.find(".says").getText().contains("does not let this page ask"));
            browser.until("the figures are there", this::figuresAreThere);
            browser.complaints();
        });
    }

    @Test
    void theDashboardWorksFromElsewhere() {
        try (PageServer pages = new PageServer(Path.of("dashboard"));
                Service service = service(List.of(pages.origin()))) {
            Dashboard dashboard = new Dashboard(browser);
            browser.size(1280, 900);
            dashboard.open(pages.origin() + "/?service=" + url(service));
            assertThat(dashboard.verdict())
                    .startsWith(
                            Dashboard.said(LiveService.answer("build-review", LiveService.example("build-review"))));
            dashboard.type("/airframe/limits/max_takeoff_mass_g", "1000");
            browser.until("it is answered", () -> dashboard.verdict().startsWith("Stop"));
        }
    }

    private void onTheBoard(boolean allowed, Runnable check) {
        try (PageServer pages = new PageServer(Path.of("embedding"));
                Service service = service(allowed ? List.of(pages.origin()) : List.of())) {
            pages.serviceIsAt(url(service));
            browser.size(1280, 900);
            browser.prefers("light");
            browser.open(pages.origin() + "/");
            check.run();
        }
    }

    private void untilNumbers() {
        browser.until(
                "figures and numbers are there",
                () -> figuresAreThere()
                        && browser.all("[data-at]").stream()
                                .map(WebElement::getText)
                                .noneMatch("–"::equals));
    }

    private boolean figuresAreThere() {
        return browser.run("return [...document.images].every((p) => p.complete && p.naturalWidth > 0)");
    }

    private double number(String pointer) {
        return Double.parseDouble(browser.find("[data-at='" + pointer + "']").getText());
    }

    private static Service service(List<String> origins) {
        return Service.start(
                Settings.onAFreePort().admitting(Admission.ofAnyone().from(origins)));
    }

    private static String url(Service service) {
        return "http://127.0.0.1:" + service.port();
    }
}
