package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** From nothing to a first answer with its bands, and what the browser keeps meanwhile. */
class DashboardBeginTest {
    private static final String SPAN = "/airframe/wing/span_mm";
    private static final String DRAG = "/airframe/drag/zero_lift_coefficient";

    private final Browser browser = Browser.shared();
    private final Dashboard dashboard = new Dashboard(browser);

    @BeforeEach
    void openWithNothing() {
        browser.size(1280, 900);
        dashboard.openAnew(LiveService.url() + "/dashboard/");
        browser.complaints();
    }

    @Test
    void tenFactsGiveABandedAnswer() {
        assertThat(dashboard.verdict()).startsWith("No answer yet").contains("to go: how it is built, span");
        assertThat(browser.all("#begin .fact")).hasSize(10);

        dashboard.tellFirstFacts();
        dashboard.untilAnswered();

        assertThat(dashboard.verdict()).startsWith("Attention");
        assertThat(browser.find("#tiles [data-name='endurance_h']").getText()).containsPattern("\\d–\\d|\\d to \\d");
        assertThat(browser.all("#estimates li")).isNotEmpty();
        assertThat(browser.find("#estimates-part").getRect().getY())
                .isLessThan(browser.find("#findings-part").getRect().getY());
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void nothingIsRedBeforeAllIsTold() {
        fact("/packs/0/layout").sendKeys("7s3p");

        assertThat(dashboard.verdict()).contains("8 facts to go");
        assertThat(browser.all("[aria-invalid='true'], .faults p, #faults li")).isEmpty();
    }

    @Test
    void theKeyboardAloneIsEnough() {
        browser.find("#empty").sendKeys(Keys.ENTER);
        List<String> keys = List.of("Payload", "2800", "280", "6600", "7s3p", "21700", "15x8", "320", "1", "16");
        for (String typed : keys) {
            browser.focused().sendKeys(typed);
            browser.focused().sendKeys(Keys.TAB);
        }
        dashboard.untilAnswered();

        assertThat(dashboard.verdict()).startsWith("Attention");
    }

    @Test
    void aWrongFactIsToldAtItself() {
        dashboard.tellFirstFacts();
        dashboard.untilAnswered();
        var span = fact(SPAN);
        span.sendKeys(Keys.chord(Keys.CONTROL, "a"), "2,8");
        browser.until(
                "the fault is told",
                () -> !browser.all("#begin [data-at='" + SPAN + "'] .faults p").isEmpty());

        assertThat(span.getDomAttribute("aria-invalid")).isEqualTo("true");
        span.sendKeys(Keys.chord(Keys.CONTROL, "a"), "2800");
        dashboard.untilAnswered();
        assertThat(browser.all("#begin [aria-invalid]")).isEmpty();
    }

    @Test
    void anEstimateStandsInItsPlaceUntilItIsReplaced() {
        dashboard.tellFirstFacts();
        dashboard.untilAnswered();
        browser.find("#tab-form").click();
        dashboard.openSection(DRAG);
        var drag = browser.find(Dashboard.field(DRAG) + " input");
        assertThat(drag.getDomAttribute("placeholder")).startsWith("0.04");
        assertThat(browser.find(Dashboard.field(DRAG) + " .usual").getText()).contains("usual 0.0349 to 0.0641");

        drag.sendKeys("0.033");
        browser.until(
                "the figure follows",
                () -> dashboard.texts("#estimates li").stream()
                        .noneMatch(line -> line.contains("Zero lift coefficient")));

        assertThat(browser.find(Dashboard.field(DRAG) + " .usual").isDisplayed())
                .isFalse();
        assertThat(browser.find("#json").getDomProperty("value")).contains("\"zero_lift_coefficient\": 0.033");
    }

    @Test
    void aPouchAsksItsCapacity() {
        new Select(fact("/packs/0/cell")).selectByVisibleText("lithium polymer pouch");

        assertThat(dashboard.verdict()).contains("capacity of a cell");
        assertThat(browser.all("#begin [data-at='/packs/0/cell/capacity_ah'] input"))
                .hasSize(1);
    }

    @Test
    void whatWasTypedIsThereWhenThePageIsOpenedAgain() {
        fact(SPAN).sendKeys("2810");
        dashboard.openAsKept(LiveService.url() + "/dashboard/");

        assertThat(fact(SPAN).getDomProperty("value")).isEqualTo("2810");
        assertThat(browser.find("#opened").getText()).contains("as this browser kept it");
        assertThat(browser.all("[aria-invalid='true'], #faults li")).isEmpty();
    }

    @Test
    void whatWasTakenBackCanBeDoneAgain() {
        fact(SPAN).sendKeys("2810");
        browser.find("#undo").click();
        assertThat(fact(SPAN).getDomProperty("value")).isEmpty();

        browser.find("#redo").click();

        assertThat(fact(SPAN).getDomProperty("value")).isEqualTo("2810");
        assertThat(browser.find("#redo").isEnabled()).isFalse();
    }

    private WebElement fact(String at) {
        return dashboard.fact(at);
    }
}
