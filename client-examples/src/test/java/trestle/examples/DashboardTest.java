package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The dashboard, as people use it, in a real browser on the live service. */
class DashboardTest {
    private static final String REVIEW = "build-review";
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
    void theExampleIsReviewedAsThePageOpens() {
        JsonNode answer = LiveService.answer(REVIEW, LiveService.example(REVIEW));

        assertThat(page.verdict()).startsWithIgnoringCase(answer.path("verdict").asText());
        long ofCruise = answer.path("bands").properties().stream()
                .filter(band -> !answer.path("key_figures").has(band.getKey()))
                .count();
        assertThat(browser.all("#tiles .tile"))
                .hasSize(answer.path("key_figures").size() + (int) ofCruise);
        assertThat(browser.all("#estimates li")).isNotEmpty();
        answer.path("key_figures")
                .properties()
                .forEach(figure -> assertThat(page.tile(figure.getKey()))
                        .isEqualTo(figure.getValue().asDouble()));
        assertThat(page.texts("#findings .finding p")).isEqualTo(textsOf(answer, "findings", "message"));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void theVerdictFollowsTheForm() {
        ObjectNode example = LiveService.example(REVIEW);
        String said = Dashboard.said(LiveService.answer(REVIEW, example));
        assertThat(page.verdict()).startsWith(said);

        page.type(LIMIT, "1000");
        browser.until("a passed limit stops", () -> page.verdict().startsWith("Stop"));
        assertThat(page.texts("#findings .finding.stop p")).anyMatch(text -> text.contains("1000 g"));
        assertThat(browser.all(Dashboard.field(LIMIT) + " .pin .mark.stop")).hasSize(1);

        page.type(LIMIT, example.at(LIMIT).asText());
        browser.until("the limit is kept", () -> page.verdict().startsWith(said));
        assertThat(browser.all(Dashboard.field(LIMIT) + " .pin")).isEmpty();
    }

    @Test
    void aBrokenFieldIsToldAtItselfUntilItIsMended() {
        String chord = "/airframe/wing/panels/0/root_chord_mm";

        page.type(chord, "31,0");
        browser.until("a comma is refused", () -> page.verdict().startsWith("No answer"));
        WebElement input = browser.find(Dashboard.field(chord) + " input");
        assertThat(input.getDomAttribute("aria-invalid")).isEqualTo("true");
        assertThat(browser.find(Dashboard.field(chord) + " .faults").getText())
                .contains("\"31,0\"", "ust be a number in mm");
        assertThat(browser.find("#stale").isDisplayed()).isTrue();
        assertThat(browser.all("#faults > .fault")).hasSize(1);

        page.type(chord, "");
        browser.until(
                "an empty field is missing",
                () -> browser.find(Dashboard.field(chord) + " .faults")
                        .getText()
                        .contains("missing"));

        page.type(chord, "310");
        page.untilAnswered();
        assertThat(browser.find(Dashboard.field(chord) + " input").getDomAttribute("aria-invalid"))
                .isNull();
        assertThat(browser.find(Dashboard.field(chord) + " .faults").getText()).isEmpty();
        assertThat(browser.find("#stale").isDisplayed()).isFalse();
    }

    /** A polygon is a list of lists of numbers: one text, of which a broken one is told and the last good one kept. */
    @Test
    void aPolygonIsTypedAsItsNumbers() {
        String block = "details[data-at='/survey']";
        browser.run("document.querySelector(\"" + block + "\").open = true");
        WebElement text = browser.find(block + " textarea");
        assertThat(text.getDomProperty("value")).startsWith("[[[8.208,53.601]");

        text.sendKeys(Keys.END, "x");
        assertThat(browser.find(block + " .numbers .faults").getText()).contains("no list of numbers");
        assertThat(page.verdict()).doesNotStartWith("No answer");

        browser.run("const area = document.querySelector(\"" + block + " textarea\"); area.value ="
                + " '[[[8.2,53.6],[8.21,53.6],[8.21,53.61],[8.2,53.6]]]'; area.dispatchEvent(new Event('input'))");
        browser.until(
                "a smaller block is covered",
                () -> browser.all(block + " [aria-invalid]").isEmpty()
                        && page.verdict().startsWith("Fit"));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void everyFindingLeadsToItsField() {
        JsonNode findings =
                LiveService.answer(REVIEW, LiveService.example(REVIEW)).path("findings");
        assertThat(findings.size()).isPositive();
        for (int i = 0; i < findings.size(); i++) {
            String at = findings.get(i).path("at").asText();

            browser.find("#findings li[data-index='" + i + "'] .go").sendKeys(Keys.ENTER);

            String focused = browser.run("return document.activeElement.closest('[data-at]').dataset.at");
            // What is not given has no field yet; what it would stand in has.
            assertThat(at).startsWith(focused);
            assertThat(browser.focused().isDisplayed()).isTrue();
        }
        browser.screenshot("dashboard-finding");
    }

    @Test
    void aFaultLeadsToItsFieldFromTheJsonToo() {
        page.type("/airframe/wing/root_leading_edge_arm_mm", "x");
        browser.until("text is refused", () -> page.verdict().startsWith("No answer"));
        browser.find("#tab-json").click();

        browser.find("#faults .go").click();

        assertThat(browser.find("#panel-form").isDisplayed()).isTrue();
        assertThat(browser.focused().getDomProperty("value")).isEqualTo("x");
    }

    @Test
    void theLastOfManyChangesIsWhatIsShown() {
        for (int mass = 500; mass < 530; mass++) {
            page.type("/items/4/mass_g", String.valueOf(mass));
        }
        ObjectNode last = LiveService.example(REVIEW);
        ((ObjectNode) last.at("/items/4")).put("mass_g", 529);
        double expected =
                LiveService.answer(REVIEW, last).at("/key_figures/total_mass_g").asDouble();

        browser.until("the last is answered", () -> page.tile("total_mass_g") == expected);
        assertThat(browser.find("#tiles [data-name='total_mass_g'] .change").getText())
                .startsWith("was ");
    }

    @Test
    void entriesAreAddedFilledRemovedAndTakenBack() {
        double before = page.tile("total_mass_g");
        String added = "/items/" + LiveService.example(REVIEW).path("items").size();
        page.openSection("/items");
        page.button("#form [data-at='/items']", "Add to items").click();
        browser.until("what is missing is told", () -> page.verdict().startsWith("No answer"));
        assertThat(browser.all("#faults > .fault")).hasSize(3);
        assertThat(browser.focused()
                        .findElement(By.xpath("ancestor::*[@data-at][1]"))
                        .getDomAttribute("data-at"))
                .isEqualTo(added + "/name");

        browser.focused().sendKeys("ballast");
        page.type(added + "/mass_g", "100");
        page.type(added + "/arm_mm", "540");
        browser.until("the mass counts", () -> Math.abs(page.tile("total_mass_g") - before - 100) < 1e-3);
        assertThat(browser.find("#form [data-at='" + added + "'] .title").getText())
                .contains("ballast");

        page.button("#form [data-at='" + added + "']", "Remove").click();
        browser.until("it is gone", () -> Math.abs(page.tile("total_mass_g") - before) < 1e-3);

        browser.find("#undo").click();
        browser.until("it is back", () -> Math.abs(page.tile("total_mass_g") - before - 100) < 1e-3);
    }

    @Test
    void anOptionalFieldIsAddedWithWhatHeldWithoutIt() {
        JsonNode answer = LiveService.answer(REVIEW, LiveService.example(REVIEW));
        assertThat(textsOf(answer, "assumptions", "at")).contains("/airframe/tail/efficiency");
        browser.find("#assumptions")
                .findElement(By.xpath(".."))
                .findElement(By.tagName("summary"))
                .click();

        page.button("#assumptions", "Set Airframe › Tail › Efficiency").click();

        assertThat(browser.focused().getDomProperty("value")).isEqualTo("0.9");
        browser.until(
                "it is no longer assumed",
                () -> page.texts("#assumptions li p").stream()
                        .noneMatch(text -> text.startsWith("Airframe › Tail › Efficiency")));
        assertThat(page.tile("static_margin_percent"))
                .isEqualTo(answer.at("/key_figures/static_margin_percent").asDouble());
    }

    @Test
    void everyCheckIsListedWithItsOutcome() {
        JsonNode answer = LiveService.answer(REVIEW, LiveService.example(REVIEW));

        browser.run("document.querySelector('#checks').closest('details').open = true");

        List<WebElement> rows = browser.all("#checks tbody tr");
        assertThat(rows).hasSize(answer.path("checks").size());
        List<String> listed = rows.stream().map(WebElement::getText).toList();
        for (int i = 0; i < listed.size(); i++) {
            JsonNode check = answer.path("checks").get(i);
            assertThat(listed.get(i))
                    .startsWith(check.path("about").asText())
                    .contains(check.path("outcome").asText().replace('_', ' '));
        }
        browser.run("document.querySelector('#checks').scrollIntoView()");
        browser.screenshot("dashboard-checks");
    }

    @Test
    void whatWasNotJudgedIsNamedAndCanBeGiven() {
        page.openSection("/airframe");
        page.button("#form [data-at='/airframe/limits']", "Remove limits").click();
        browser.until(
                "the limits are not judged",
                () -> browser.<String>run("return document.querySelector('#not-judged').textContent")
                        .contains("Give Airframe › Limits"));
        assertThat(page.verdict()).doesNotStartWith("Fit");
        browser.run("document.querySelector('#not-judged').scrollIntoView()");
        browser.screenshot("dashboard-not-judged");

        page.button("#not-judged", "Give Airframe › Limits").click();

        assertThat(browser.all(Dashboard.field("/airframe/limits"))).hasSize(1);
    }

    @Test
    void aPartThatTheDocumentLacksIsNeverTicked() {
        page.openSection("/wiring");
        page.openSection("/compass");
        page.button("#form [data-at='/compass']", "Remove compass").click();
        page.untilAnswered();
        page.button("#form [data-at='/wiring']", "Remove wiring").click();
        page.untilAnswered();

        assertThat(page.texts("#not-judged li")).anyMatch(text -> text.endsWith("Give Wiring"));
        assertThat(browser.all("#parts [data-name='wire_sizing'] .mark.fit")).isEmpty();
    }

    @Test
    void twoStatesStandSideBySide() {
        browser.find("#compare").click();
        assertThat(browser.find("#compared").getText()).contains("Nothing differs", "as before");

        page.type(LIMIT, "1000");
        browser.until("it is answered", () -> page.verdict().startsWith("Stop"));

        assertThat(browser.find("#compared").getText())
                .contains(
                        "fit before",
                        "stop now",
                        "Differences in the aircraft: 1",
                        "7500 → 1000 g",
                        "✔ passed → ⬣ stop");

        browser.run("document.querySelector('#compared-part').scrollIntoView({block: 'center'})");
        browser.screenshot("dashboard-compared");
        browser.find("#compare-end").click();
        assertThat(browser.find("#compared-part").isDisplayed()).isFalse();
    }

    /** The comparison outlives the document that it began with. */
    @Test
    void anotherAircraftIsComparedWithTheFirst() {
        browser.find("#compare").click();
        page.openAnother();

        assertThat(browser.find("#compared").getText()).contains("Differences in the aircraft", "Take-off mass");
    }

    @Test
    void anAnswerThatIsNotTheDocumentsIsMarked() {
        page.type("/airframe/wing/root_leading_edge_arm_mm", "x");
        browser.until("it is refused", () -> page.verdict().startsWith("No answer"));
        assertThat(browser.find("#stale").isDisplayed()).isTrue();

        browser.find("#theme option[value='dark']").click();

        assertThat(browser.find("#stale").isDisplayed()).isTrue();
        assertThat(page.verdict()).startsWith("No answer");
    }

    @Test
    void thatItIsNoApprovalIsSaidAtOnceAndTheCautionsAreOneClickAway() {
        assertThat(browser.find("#aid summary").getText()).startsWith("An aid, not an approval");
        JsonNode answer = LiveService.answer(REVIEW, LiveService.example(REVIEW));

        browser.find("#aid summary").click();

        assertThat(page.texts("#cautions li"))
                .hasSize(answer.path("cautions").size())
                .allSatisfy(text -> assertThat(text).isNotBlank());
        assertThat(browser.find("#cautions").isDisplayed()).isTrue();
    }

    @Test
    void aServiceThatCannotBeReachedIsToldInWords() {
        browser.open(LiveService.url() + "/dashboard/?service=http://127.0.0.1:9");

        browser.until("it is told", () -> page.verdict().contains("http://127.0.0.1:9 cannot be reached"));
    }

    private static List<String> textsOf(JsonNode answer, String list, String name) {
        return StreamSupport.stream(((ArrayNode) answer.path(list)).spliterator(), false)
                .map(entry -> entry.path(name).asText())
                .toList();
    }
}
