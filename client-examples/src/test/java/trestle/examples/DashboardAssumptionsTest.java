package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What stands beside an assumption leads to where it can be told. */
class DashboardAssumptionsTest {
    private static final String PRESS_ALL = """
            const buttons = [...document.querySelectorAll('#assumptions button')];
            window.pressed = buttons.length;
            return buttons.filter((button) => {
              document.activeElement.blur();
              button.click();
              const reached = document.activeElement;
              return !reached.closest('#form') || reached.getClientRects().length === 0;
            }).map((button) => button.dataset.key)
            """;

    @Test
    void everyAssumptionCanBeReachedInTheForm() {
        Browser browser = Browser.shared();
        browser.size(1280, 900);
        Dashboard page = new Dashboard(browser);
        page.open(LiveService.url() + "/dashboard/");
        browser.run("document.querySelector('#assumptions').closest('details').open = true");

        List<String> leadNowhere = browser.run(PRESS_ALL);

        assertThat(browser.<Long>run("return window.pressed")).isGreaterThan(40);
        assertThat(leadNowhere).isEmpty();
    }
}
