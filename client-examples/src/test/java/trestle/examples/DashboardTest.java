package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The dashboard, as people use it, in a real browser on the live service. */
class DashboardTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String REVIEW = "build-review";
    private static final String LIMIT = "/airframe/limits/max_takeoff_mass_g";

    @TempDir private static Path downloads;
    private static Browser browser;

    @TempDir private Path folder;

    @BeforeAll
    static void startBrowser() {
        browser = Browser.start(downloads);
    }

    @AfterAll
    static void closeBrowser() {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void openDashboard() {
        browser.size(1280, 900);
        browser.prefers("light");
        browser.open(LiveService.url() + "/dashboard/");
        untilAnswered();
        browser.complaints();
    }

    @Test
    void theExampleIsReviewedAsThePageOpens() {
        JsonNode answer = LiveService.answer(REVIEW, LiveService.example(REVIEW));

        assertThat(verdict()).startsWithIgnoringCase(answer.path("verdict").asText());
        assertThat(browser.all("#tiles .tile")).hasSize(answer.path("key_figures").size());
        answer.path("key_figures")
                .properties()
                .forEach(
                        figure ->
                                assertThat(tile(figure.getKey()))
                                        .isEqualTo(figure.getValue().asDouble()));
        assertThat(texts("#findings .finding p")).isEqualTo(textsOf(answer, "findings", "message"));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void theVerdictFollowsTheForm() {
        assertThat(verdict()).startsWith("Attention");

        type(LIMIT, "1000");
        browser.until("a passed limit stops", () -> verdict().startsWith("Stop"));
        assertThat(texts("#findings .finding.stop p")).anyMatch(text -> text.contains("1000 g"));
        assertThat(browser.all(field(LIMIT) + " .pin .mark.stop")).hasSize(1);

        type(LIMIT, "7000");
        browser.until("the limit is kept", () -> verdict().startsWith("Attention"));
        assertThat(browser.all(field(LIMIT) + " .pin")).isEmpty();
    }

    @Test
    void aBrokenFieldIsToldAtItselfUntilItIsMended() {
        String chord = "/airframe/wing/panels/0/root_chord_mm";

        type(chord, "31,0");
        browser.until("a comma is refused", () -> verdict().startsWith("No answer"));
        WebElement input = browser.find(field(chord) + " input");
        assertThat(input.getDomAttribute("aria-invalid")).isEqualTo("true");
        assertThat(browser.find(field(chord) + " .faults").getText())
                .contains("\"31,0\"", "must be a number, in mm");
        assertThat(browser.find("#stale").isDisplayed()).isTrue();
        assertThat(browser.all("#faults > .fault")).hasSize(1);

        type(chord, "");
        browser.until(
                "an empty field is missing",
                () -> browser.find(field(chord) + " .faults").getText().contains("missing"));

        type(chord, "310");
        untilAnswered();
        assertThat(browser.find(field(chord) + " input").getDomAttribute("aria-invalid")).isNull();
        assertThat(browser.find(field(chord) + " .faults").getText()).isEmpty();
        assertThat(browser.find("#stale").isDisplayed()).isFalse();
    }

    @Test
    void everyFindingLeadsToItsField() {
        JsonNode findings =
                LiveService.answer(REVIEW, LiveService.example(REVIEW)).path("findings");
        assertThat(findings.size()).isPositive();
        for (int i = 0; i < findings.size(); i++) {
            String at = findings.get(i).path("at").asText();

            browser.find("#findings li[data-index='" + i + "'] .go").sendKeys(Keys.ENTER);

            String focused =
                    browser.run("return document.activeElement.closest('[data-at]').dataset.at");
            assertThat(focused).isEqualTo(at);
            assertThat(browser.focused().isDisplayed()).isTrue();
        }
        browser.screenshot("dashboard-finding");
    }

    @Test
    void aFaultLeadsToItsFieldFromTheJsonToo() {
        type("/airframe/wing/root_leading_edge_arm_mm", "x");
        browser.until("text is refused", () -> verdict().startsWith("No answer"));
        browser.find("#tab-json").click();

        browser.find("#faults .go").click();

        assertThat(browser.find("#panel-form").isDisplayed()).isTrue();
        assertThat(browser.focused().getDomProperty("value")).isEqualTo("x");
    }

    @Test
    void theLastOfManyChangesIsWhatIsShown() {
        for (int mass = 500; mass < 530; mass++) {
            type("/items/4/mass_g", String.valueOf(mass));
        }
        ObjectNode last = LiveService.example(REVIEW);
        ((ObjectNode) last.at("/items/4")).put("mass_g", 529);
        double expected =
                LiveService.answer(REVIEW, last).at("/key_figures/total_mass_g").asDouble();

        browser.until("the last is answered", () -> tile("total_mass_g") == expected);
        assertThat(browser.find("#tiles [data-name='total_mass_g'] .change").getText())
                .startsWith("was ");
    }

    @Test
    void entriesAreAddedFilledRemovedAndTakenBack() {
        double before = tile("total_mass_g");
        open("/items");
        button("#form [data-at='/items']", "Add to items").click();
        browser.until("what is missing is told", () -> verdict().startsWith("No answer"));
        assertThat(browser.all("#faults > .fault")).hasSize(3);
        assertThat(
                        browser.focused()
                                .findElement(By.xpath("ancestor::*[@data-at][1]"))
                                .getDomAttribute("data-at"))
                .isEqualTo("/items/8/name");

        browser.focused().sendKeys("ballast");
        type("/items/8/mass_g", "100");
        type("/items/8/arm_mm", "540");
        browser.until(
                "the mass counts", () -> Math.abs(tile("total_mass_g") - before - 100) < 1e-3);
        assertThat(browser.find("#form [data-at='/items/8'] .title").getText()).contains("ballast");

        button("#form [data-at='/items/8']", "Remove").click();
        browser.until("it is gone", () -> Math.abs(tile("total_mass_g") - before) < 1e-3);

        browser.find("#undo").click();
        browser.until("it is back", () -> Math.abs(tile("total_mass_g") - before - 100) < 1e-3);
    }

    @Test
    void anOptionalFieldIsAddedWithWhatHeldWithoutIt() {
        JsonNode answer = LiveService.answer(REVIEW, LiveService.example(REVIEW));
        assertThat(textsOf(answer, "assumptions", "at")).contains("/airframe/tail/efficiency");
        browser.find("#assumptions")
                .findElement(By.xpath(".."))
                .findElement(By.tagName("summary"))
                .click();

        button("#assumptions", "Set Airframe › Tail › Efficiency").click();

        assertThat(browser.focused().getDomProperty("value")).isEqualTo("0.9");
        browser.until(
                "it is no longer assumed",
                () ->
                        texts("#assumptions li p").stream()
                                .noneMatch(
                                        text -> text.startsWith("Airframe › Tail › Efficiency")));
        assertThat(tile("static_margin_percent"))
                .isEqualTo(answer.at("/key_figures/static_margin_percent").asDouble());
    }

    @Test
    void aDocumentIsOpenedAndSavedAsItIs() throws IOException {
        ObjectNode document = LiveService.example(REVIEW);
        document.put("name", "Reed bed 2/b");
        ((ObjectNode) document.at("/mission")).put("headwind_m_per_s", 7.25);
        Path file = Files.writeString(folder.resolve("mine.json"), document.toString());

        browser.find("#file").sendKeys(file.toString());
        double expected =
                LiveService.answer(REVIEW, document)
                        .at("/key_figures/best_ground_range_km")
                        .asDouble();
        browser.until("it is answered", () -> tile("best_ground_range_km") == expected);

        browser.find("#save").click();
        Path saved = downloads.resolve("reed-bed-2-b.json");
        browser.until("it is saved", () -> Files.exists(saved));
        assertThat(MAPPER.readTree(Files.readString(saved))).isEqualTo(document);
    }

    @Test
    void aFileThatIsNoDocumentIsRefusedInWords() throws IOException {
        Path file = Files.writeString(folder.resolve("broken.json"), "{\"items\": [}");

        browser.find("#file").sendKeys(file.toString());

        browser.until("it is refused", () -> verdict().startsWith("Not opened broken.json"));
    }

    @Test
    void whatTheContractDoesNotKnowIsShownAndCanBeRemoved() throws IOException {
        ObjectNode document = LiveService.example(REVIEW);
        ((ObjectNode) document.at("/packs/0")).put("serie", 4);
        Path file = Files.writeString(folder.resolve("typo.json"), document.toString());
        browser.find("#file").sendKeys(file.toString());
        browser.until("it is refused", () -> verdict().startsWith("No answer"));

        browser.find("#faults .go").click();
        assertThat(browser.find(field("/packs/0/serie")).getText()).contains("did you mean");
        browser.focused().click();

        browser.until("it is answered", () -> verdict().startsWith("Attention"));
    }

    @Test
    void theJsonIsTheDocumentBothWays() throws IOException {
        type("/mission/reserve_percent", "35");
        browser.find("#tab-json").click();
        WebElement text = browser.find("#json");
        ObjectNode written = (ObjectNode) MAPPER.readTree(text.getDomProperty("value"));
        assertThat(written.at("/mission/reserve_percent").asInt()).isEqualTo(35);

        ((ObjectNode) written.at("/airframe/limits")).put("max_takeoff_mass_g", 1000);
        write(text, written.toString());
        browser.until("it is answered", () -> verdict().startsWith("Stop"));

        write(text, "{\"name\": }");
        assertThat(browser.find("#json-fault").getText()).startsWith("Not read: ");

        browser.find("#tab-form").click();
        assertThat(browser.find(field(LIMIT) + " input").getDomProperty("value")).isEqualTo("1000");
    }

    @Test
    void whatADocumentSaysStaysText() throws IOException {
        String markup = "<img src=x onerror=window.harmed=1><u>bold</u>";
        ObjectNode document = LiveService.example(REVIEW);
        document.put("name", markup);
        ((ObjectNode) document.at("/items/0")).put("name", markup);
        ((ObjectNode) document.at("/wiring/0")).put("name", markup);
        ((ObjectNode) document.at("/compass/runs/0")).put("run", markup);
        document.put("<u>unknown</u>", markup);
        Path file = Files.writeString(folder.resolve("markup.json"), document.toString());
        browser.find("#file").sendKeys(file.toString());
        browser.until("it is refused", () -> verdict().startsWith("No answer"));
        browser.find("#faults .go").click();
        browser.focused().click();
        untilAnswered();
        browser.run(
                "document.querySelectorAll('details').forEach((part) => { part.open = true; })");
        browser.until(
                "all is drawn", () -> !browser.all("[data-name='wire_sizing'] table").isEmpty());

        assertThat(browser.find("body").getText()).contains(markup);
        assertThat(browser.all("u, main img:not([src^='blob:'])")).isEmpty();
        assertThat(browser.<Object>run("return window.harmed")).isNull();
    }

    @Test
    void theCallsCanBeTypedElsewhere() throws IOException, InterruptedException {
        type(LIMIT, "1000");
        type("/items/0/name", "wing's \"own\" \\ '''");
        browser.until("it is answered", () -> verdict().startsWith("Stop"));
        for (String language : List.of("curl", "python")) {
            browser.run(
                    "const select = document.getElementById('language'); select.value ="
                            + " arguments[0]; select.dispatchEvent(new Event('change'))",
                    language);
            String call = browser.find("#snippet").getDomProperty("textContent");
            Path script = Files.writeString(folder.resolve("call"), call);

            String said = printedBy(language.equals("curl") ? "bash" : "python3", script);

            JsonNode answer = MAPPER.readTree(said);
            assertThat(answer.path("verdict").asText()).as(language).isEqualTo("stop");
            assertThat(answer.at("/key_figures/total_mass_g").asDouble())
                    .isEqualTo(tile("total_mass_g"));
        }
        browser.find("#copy").click();
        browser.until("it is copied", () -> browser.find("#copied").getText().equals("Copied."));
    }

    @Test
    void aServiceThatCannotBeReachedIsToldInWords() {
        browser.open(LiveService.url() + "/dashboard/?service=http://127.0.0.1:9");

        browser.until(
                "it is told", () -> verdict().contains("http://127.0.0.1:9 cannot be reached"));
    }

    @Test
    void theKeyboardReachesTheAircraftFirst() {
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
        browser.run(
                "document.querySelectorAll('details').forEach((part) => { part.open = true; })");
        List<String> nameless =
                browser.run(
                        """
                        return [...document.querySelectorAll('input, select, textarea, button, a, summary')]
                            .filter((part) => part.id !== 'file')
                            .filter((part) => !(part.getAttribute('aria-label') || part.textContent.trim()
                                || part.labels?.[0]?.textContent.trim()) || (part.matches('input, textarea')
                                && !part.labels[0] && !part.hasAttribute('aria-label')))
                            .map((part) => part.outerHTML)
                        """);
        List<String> shared =
                browser.run(
                        """
                        const ids = [...document.querySelectorAll('[id]')].map((part) => part.id);
                        return ids.filter((id, index) => ids.indexOf(id) !== index)
                        """);
        List<String> dangling =
                browser.run(
                        """
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
    @CsvSource({"1280, light", "1280, dark", "360, light", "360, dark"})
    void everyWordIsLegibleAndNothingRunsOff(int width, String scheme) throws IOException {
        browser.prefers(scheme);
        browser.size(width, width < 500 ? 780 : 900);
        browser.open(LiveService.url() + "/dashboard/");
        untilAnswered();
        browser.screenshot("dashboard-" + scheme + "-" + width);
        type(LIMIT, "1000");
        type("/airframe/wing/root_leading_edge_arm_mm", "x");
        browser.until("a fault is shown", () -> verdict().startsWith("No answer"));
        browser.run(
                "document.querySelectorAll('details').forEach((part) => { part.open = true; })");
        browser.until(
                "all is drawn", () -> !browser.all("[data-name='wire_sizing'] table").isEmpty());

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
                browser.until("the docs are drawn", () -> browser.all(".opblock").size() > 9);
            }
            List<String> loaded =
                    browser.run(
                            "return performance.getEntriesByType('resource').map((entry) =>"
                                    + " entry.name)");
            assertThat(loaded)
                    .as(page)
                    .allMatch(
                            name ->
                                    name.startsWith(LiveService.url())
                                            || name.startsWith("blob:")
                                            || name.startsWith("data:"));
            assertThat(browser.complaints()).as(page).isEmpty();
        }
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

    // What is on the page

    private static void untilAnswered() {
        browser.until(
                "the document is answered",
                () ->
                        !browser.find("#verdict")
                                .getDomAttribute("class")
                                .matches(".*(none|busy|fault).*"));
    }

    private static String verdict() {
        return browser.find("#verdict-text").getText().replaceFirst("^\\W+", "");
    }

    /** The number behind a tile, unrounded. */
    private static double tile(String name) {
        return Double.parseDouble(
                browser.find("#tiles [data-name='" + name + "'] dd").getDomAttribute("title"));
    }

    private static String field(String at) {
        return "#form [data-at='" + at + "']";
    }

    private static void open(String section) {
        browser.run(
                "document.querySelector(arguments[0]).closest('details.section').open = true",
                field(section));
    }

    private static void type(String at, String text) {
        open(at);
        WebElement input = browser.find(field(at) + " input");
        browser.run("arguments[0].select()", input);
        input.sendKeys(text.isEmpty() ? Keys.BACK_SPACE : text);
    }

    /** Typing a document key by key would take minutes. */
    private static void write(WebElement area, String text) {
        browser.run(
                "arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('input'))",
                area,
                text);
    }

    private static WebElement button(String inside, String name) {
        return browser.all(inside + " button").stream()
                .filter(
                        button ->
                                button.getAccessibleName().startsWith(name)
                                        || button.getText().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + name + " in " + inside));
    }

    private static List<String> texts(String css) {
        return browser.all(css).stream().map(WebElement::getText).toList();
    }

    private static List<String> textsOf(JsonNode answer, String list, String name) {
        return StreamSupport.stream(((ArrayNode) answer.path(list)).spliterator(), false)
                .map(entry -> entry.path(name).asText())
                .toList();
    }

    private static String background() {
        return browser.run("return getComputedStyle(document.body).backgroundColor");
    }

    private static String script(String name) throws IOException {
        try (var in = DashboardTest.class.getResourceAsStream("/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String printedBy(String command, Path script)
            throws IOException, InterruptedException {
        Process process =
                new ProcessBuilder(command, script.toString()).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }
}
