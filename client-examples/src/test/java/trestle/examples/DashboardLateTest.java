package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A service that takes a request and says nothing. */
class DashboardLateTest {
    /** Calls that end only when the page gives up; those before go on as they were. */
    private static final String HANG = """
            window.answering = window.fetch;
            window.fetch = (url, options) => new Promise((_, refuse) => {
              options.signal.addEventListener('abort', () => refuse(options.signal.reason));
            })
            """;

    @Test
    void theAnswerBeforeIsMarkedWhileTheNextIsLateAndReplacedWhenItComes() {
        Browser browser = Browser.shared();
        browser.size(1280, 900);
        Dashboard page = new Dashboard(browser);
        page.open(LiveService.url() + "/dashboard/");
        assertThat(browser.find("#stale").isDisplayed()).isFalse();
        browser.run(HANG);

        page.type("/airframe/limits/max_takeoff_mass_g", "1000");

        browser.until("the old verdict is marked", () -> browser.find("#stale").isDisplayed());
        assertThat(browser.find("#verdict").getDomAttribute("class")).contains("old");

        browser.run("window.fetch = window.answering");
        page.type("/airframe/limits/max_takeoff_mass_g", "1001");

        browser.until("it is answered", () -> page.verdict().startsWith("Stop"));
        assertThat(browser.find("#stale").isDisplayed()).isFalse();
    }
}
