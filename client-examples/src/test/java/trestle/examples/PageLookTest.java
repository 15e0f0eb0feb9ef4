package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** What the pages on board look like and whom they can be used by, in a real browser. */
class PageLookTest {
    private static final String LIMIT = "/airframe/limits/max_takeoff_mass_g";

    private final Browser browser = Browser.shared();
    private final Dashboard page = new Dashboard(browser);

    @BeforeEach
    void openDashboard() {
        browser.size(1280, 900);
        browser.prefers("light");
        page.open(LiveService.url() + "/dashboard/");
        browser.complaints();
    }

    @Test
    void theKeyboardReachesTheAircraftFirst() {
        page.openAsKept(LiveService.url() + "/dashboard/");
        browser.find("body").sendKeys(Keys.TAB);
        assertThat(browser.focused().getText()).isEqualTo("To the aircraft");
        assertThat(browser.focused().getRect().getY()).isNotNegative();
        browser.focused().sendKeys(Keys.ENTER);
        browser.focused().sendKeys(Keys.TAB);
        assertThat(browser.focused().getText()).isEqualTo("Form");
        browser.focused().sendKeys(Keys.ARROW_RIGHT);
        assertThat(browser.find("#panel-json").isDisplayed()).isTrue();
    }

    @Test
    void everyControlHasANameAndNoTwoShareAnId() {
        browser.find("#unfold").click();
        page.unfold();
        List<String> nameless = browser.run("""
                        return [...document.querySelectorAll('input, select, textarea, button, a, summary')]
                            .filter((part) => part.id !== 'file')
                            .filter((part) => !(part.getAttribute('aria-label') || part.textContent.trim()
                                || part.labels?.[0]?.textContent.trim()) || (part.matches('input, textarea')
                                && !part.labels[0] && !part.hasAttribute('aria-label')))
                            .map((part) => part.outerHTML)
                        """);
        List<String> shared = browser.run("""
                        const ids = [...document.querySelectorAll('[id]')].map((part) => part.id);
                        return ids.filter((id, index) => ids.indexOf(id) !== index)
                        """);
        List<String> dangling = browser.run("""
                        return [...document.querySelectorAll('[aria-describedby], [aria-labelledby], [aria-controls]')]
                            .flatMap((part) => ['aria-describedby', 'aria-labelledby', 'aria-controls']
                                .flatMap((name) => (part.getAttribute(name) ?? '').split(' ')))
                            .filter((id) => id !== '' && document.getElementById(id) === null)
                        """);
        assertThat(nameless).isEmpty();
        assertThat(shared).isEmpty();
        assertThat(dangling).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1280, light", "768, dark", "360, light", "360, dark"})
    void theFirstPageIsLegibleAndWhatItEstimatesToo(int width, String scheme) throws IOException {
        browser.prefers(scheme);
        browser.size(width, width < 500 ? 780 : 900);
        page.openAnew(LiveService.url() + "/dashboard/");
        browser.screenshot("begin-" + scheme + "-" + width);
        assertThat(browser.<List<String>>run(script("contrast.js"))).isEmpty();
        assertThat(browser.<List<String>>run(script("overflow.js"))).isEmpty();

        page.tellFirstFacts();
        page.untilAnswered();
        browser.screenshot("begin-" + scheme + "-" + width + "-answer");
        browser.find("#tab-form").sendKeys(Keys.ENTER);
        page.openSection("/airframe/drag/zero_lift_coefficient");
        browser.screenshot("begin-" + scheme + "-" + width + "-form");
        assertThat(browser.<List<String>>run(script("contrast.js"))).isEmpty();
        assertThat(browser.<List<String>>run(script("overflow.js"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1280, light", "1280, dark", "360, light", "360, dark"})
    void everyWordIsLegibleAndNothingRunsOff(int width, String scheme) throws IOException {
        browser.prefers(scheme);
        browser.size(width, width < 500 ? 780 : 900);
        page.open(LiveService.url() + "/dashboard/");
        browser.screenshot("dashboard-" + scheme + "-" + width);
        browser.run("document.querySelector('#aid').scrollIntoView()");
        browser.screenshot("dashboard-" + scheme + "-" + width + "-answer");
        page.type(LIMIT, "1000");
        page.type("/airframe/wing/root_leading_edge_arm_mm", "x");
        browser.until("a fault is shown", () -> page.verdict().startsWith("No answer"));
        page.unfold();

        List<String> pale = browser.run(script("contrast.js"));
        assertThat(pale).as("text of too little contrast").isEmpty();
        List<String> wide = browser.run(script("overflow.js"));
        assertThat(wide).as("what is wider than its place").isEmpty();
        browser.screenshot("dashboard-" + scheme + "-" + width + "-fault");
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void theSwitchOverridesTheSystem(String scheme) {
        browser.prefers(scheme);
        String other = scheme.equals("light") ? "dark" : "light";
        String before = background();

        browser.find("#theme option[value='" + other + "']").click();

        assertThat(background()).isNotEqualTo(before);
        browser.prefers(other);
        browser.find("#theme option[value='auto']").click();
        String asTheOther = background();
        assertThat(asTheOther).isNotEqualTo(before);
    }

    @Test
    void nothingIsLoadedFromElsewhere() {
        for (String page : List.of("/dashboard/", "/docs/", "/")) {
            browser.open(LiveService.url() + page);
            if (page.equals("/docs/")) {
                browser.until(
                        "the docs are drawn", () -> browser.all(".opblock").size() > 9);
            }
            List<String> loaded =
                    browser.run("return performance.getEntriesByType('resource').map((entry) =>" + " entry.name)");
            assertThat(loaded)
                    .as(page)
                    .allMatch(name ->
                            name.startsWith(LiveService.url()) || name.startsWith("blob:") || name.startsWith("data:"));
            assertThat(browser.complaints()).as(page).isEmpty();
        }
    }

    @Test
    void aCallOfTheDocsIsAnsweredAsItStands() {
        browser.open(LiveService.url() + "/docs/");
        browser.until("the docs are drawn", () -> browser.all(".opblock").size() > 9);
        for (String operation : List.of("buildReview", "packEnergyByQuery", "wireSizing")) {
            String call = "[id$='-" + operation + "'] ";
            press(call + ".opblock-summary-control");
            press(call + ".try-out__btn");
            press(call + ".execute");
            browser.until(
                    operation + " is answered",
                    () -> browser.find(call + ".live-responses-table .response" + " .response-col_status")
                            .getText()
                            .startsWith("200"));
            assertThat(browser.find(call + ".live-responses-table").getText()).contains("\"verdict\"");
        }
        assertThat(browser.complaints()).isEmpty();
    }

    /** Presses what is drawn a moment later. */
    private void press(String css) {
        browser.until(css + " is there", () -> !browser.all(css).isEmpty());
        browser.run("arguments[0].click()", browser.find(css));
    }

    @ParameterizedTest
    @CsvSource({"1280, light", "1280, dark", "360, light", "360, dark"})
    void theOtherPagesAreLegibleToo(int width, String scheme) throws IOException {
        browser.prefers(scheme);
        browser.size(width, width < 500 ? 780 : 900);
        browser.open(LiveService.url() + "/");
        assertThat(browser.<List<String>>run(script("contrast.js"))).isEmpty();
        assertThat(browser.<List<String>>run(script("overflow.js"))).isEmpty();
        browser.screenshot("landing-" + scheme + "-" + width);

        browser.open(LiveService.url() + "/docs/");
        browser.until("the docs are drawn", () -> browser.all(".opblock").size() > 9);
        browser.find("[id$=buildReview] .opblock-summary-control").click();
        browser.until("a call is drawn", () -> !browser.all(".responses-table").isEmpty());
        assertThat(browser.<Long>run("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(width);
        browser.screenshot("docs-" + scheme + "-" + width);
    }

    private String background() {
        return browser.run("return getComputedStyle(document.body).backgroundColor");
    }

    private static String script(String name) throws IOException {
        try (var in = PageLookTest.class.getResourceAsStream("/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
