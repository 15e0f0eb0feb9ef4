package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;

/** Documents that come into the dashboard and go out of it, in a real browser. */
class DashboardDocumentTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String REVIEW = "build-review";
    private static final String LIMIT = "/airframe/limits/max_takeoff_mass_g";

    @TempDir
    private Path folder;

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
    void aDocumentIsOpenedAndSavedAsItIs() throws IOException {
        ObjectNode document = LiveService.example(REVIEW);
        document.put("name", "Reed bed 2/b");
        ((ObjectNode) document.at("/flight")).put("headwind_m_per_s", 7.25);
        Path file = Files.writeString(folder.resolve("mine.json"), document.toString());

        browser.find("#file").sendKeys(file.toString());
        double expected = LiveService.answer(REVIEW, document)
                .at("/key_figures/best_ground_range_km")
                .asDouble();
        browser.until("it is answered", () -> page.tile("best_ground_range_km") == expected);

        browser.find("#save").click();
        Path saved = Browser.DOWNLOADS.resolve("reed-bed-2-b.json");
        browser.until("it is saved", () -> Files.exists(saved));
        assertThat(MAPPER.readTree(Files.readString(saved))).isEqualTo(document);
    }

    @Test
    void aFileThatIsNoDocumentIsRefusedInWords() throws IOException {
        Path file = Files.writeString(folder.resolve("broken.json"), "{\"items\": [}");

        browser.find("#file").sendKeys(file.toString());

        browser.until("it is refused", () -> page.verdict().startsWith("Not opened broken.json"));
    }

    @Test
    void whatTheContractDoesNotKnowIsShownAndCanBeRemoved() throws IOException {
        ObjectNode document = LiveService.example(REVIEW);
        ((ObjectNode) document.at("/packs/0")).put("serie", 4);
        Path file = Files.writeString(folder.resolve("typo.json"), document.toString());
        browser.find("#file").sendKeys(file.toString());
        browser.until("it is refused", () -> page.verdict().startsWith("No answer"));

        browser.find("#faults .go").click();
        assertThat(browser.find(Dashboard.field("/packs/0/serie")).getText()).contains("did you mean");
        browser.focused().click();

        String said = Dashboard.said(LiveService.answer(REVIEW, LiveService.example(REVIEW)));
        browser.until("it is answered", () -> page.verdict().startsWith(said));
    }

    @Test
    void aDocumentOfAnEarlierVersionGetsTheNamesOfToday() throws IOException {
        ObjectNode document = LiveService.example(REVIEW);
        ObjectNode old = document.deepCopy();
        old.set("mission", old.remove("flight"));
        old.put("insulation", "wrapped").remove("covering");
        ((ObjectNode) old.at("/wiring/0")).put("strands_in_parallel", 1);
        Path file = Files.writeString(folder.resolve("earlier.json"), old.toString());

        browser.find("#file").sendKeys(file.toString());

        browser.until("it is told", () -> browser.find("#opened").getText().contains("“mission” is now “flight”"));
        assertThat(browser.find("#opened").getText())
                .contains("“insulation” is now “covering”", "“strands in parallel” is now “parallel wires”");
        document.put("covering", "wrapped");
        ((ObjectNode) document.at("/wiring/0")).put("parallel_wires", 1);
        String said = Dashboard.said(LiveService.answer(REVIEW, document));
        browser.until("it is answered", () -> page.verdict().startsWith(said));
        assertThat(browser.find("#opened").isDisplayed()).isTrue();
    }

    @Test
    void aPartOfAnotherKindIsToldInWords() throws IOException {
        Path file = Files.writeString(folder.resolve("no-packs.json"), "{\"packs\": \"no\"}");

        browser.find("#file").sendKeys(file.toString());

        browser.until("it is refused", () -> page.verdict().startsWith("No answer"));
        assertThat(page.texts("#faults li")).anyMatch(text -> text.contains("Packs"));
        assertThat(browser.complaints()).noneMatch(text -> text.contains("Uncaught"));
    }

    @Test
    void jsonThatIsBrokenIsNotLost() throws IOException {
        browser.find("#tab-json").click();
        page.write(browser.find("#json"), "{\"name\": }");
        assertThat(page.verdict()).startsWith("Not read");
        assertThat(browser.find("#stale").isDisplayed()).isTrue();

        browser.find("#tab-form").click();
        page.type("/name", "reed bed");
        browser.until("the form is answered", () -> !browser.find("#stale").isDisplayed());

        page.button("#opened", "Bring it back").click();
        assertThat(browser.find("#json").getDomProperty("value")).isEqualTo("{\"name\": }");
        assertThat(page.verdict()).startsWith("Not read");
    }

    @Test
    void theJsonIsTheDocumentBothWays() throws IOException {
        page.type("/flight/reserve_percent", "35");
        browser.find("#tab-json").click();
        WebElement text = browser.find("#json");
        ObjectNode written = (ObjectNode) MAPPER.readTree(text.getDomProperty("value"));
        assertThat(written.at("/flight/reserve_percent").asInt()).isEqualTo(35);

        ((ObjectNode) written.at("/airframe/limits")).put("max_takeoff_mass_g", 1000);
        page.write(text, written.toString());
        browser.until("it is answered", () -> page.verdict().startsWith("Stop"));

        page.write(text, "{\"name\": }");
        assertThat(browser.find("#json-fault").getText()).startsWith("Not read: ");

        browser.find("#tab-form").click();
        assertThat(browser.find(Dashboard.field(LIMIT) + " input").getDomProperty("value"))
                .isEqualTo("1000");
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
        browser.until("it is refused", () -> page.verdict().startsWith("No answer"));
        browser.find("#faults .go").click();
        browser.focused().click();
        page.untilAnswered();
        page.unfold();

        assertThat(browser.find("body").getText()).contains(markup);
        assertThat(browser.all("u, main img:not([src^='blob:'])")).isEmpty();
        assertThat(browser.<Object>run("return window.harmed")).isNull();
    }

    @Test
    void everyCalculationIsDrawnAndSaysWhatItShows() {
        JsonNode answer = LiveService.answer(REVIEW, LiveService.example(REVIEW));
        long parts = Stream.of(
                                "mass_balance",
                                "pack_energy",
                                "endurance",
                                "propulsion_match",
                                "rail_budget",
                                "launch_and_climb",
                                "compass_clearance",
                                "pack_charge",
                                "survey_coverage")
                        .filter(answer::hasNonNull)
                        .count()
                + answer.path("wire_sizing").size();
        page.unfold();
        browser.until("all is drawn", () -> browser.run("""
                                const pictures = [...document.querySelectorAll('.part figure img')];
                                return pictures.length === arguments[0] && pictures.every((p) => p.naturalWidth > 0)
                                """, parts));
        assertThat(browser.all(".part figure img"))
                .allSatisfy(
                        picture -> assertThat(picture.getDomAttribute("alt")).hasSizeGreaterThan(40));
        browser.run("document.querySelector('.part figure').scrollIntoView()");
        browser.screenshot("dashboard-drawing");

        ObjectNode heavier = LiveService.example(REVIEW);
        ((ObjectNode) heavier.at("/items/4")).put("mass_g", 900);
        double massG = LiveService.answer(REVIEW, heavier)
                .at("/key_figures/total_mass_g")
                .asDouble();
        page.type("/items/4/mass_g", "900");
        browser.until(
                "the drawing follows",
                () -> browser.find("[data-name='mass_balance'] img")
                        .getDomAttribute("alt")
                        .contains(Math.round(massG) + " g"));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void theSheetToPrintIsThatOfTheDocument() {
        page.type("/name", "reed bed");
        page.untilAnswered();

        String sheet = browser.opened(browser.find("#sheet")::click, "svg");

        assertThat(sheet).contains("reed bed", "Mass and balance");
    }

    @Test
    void oneNumberAndADrawingCanBeAskedForElsewhere() throws IOException, InterruptedException {
        Tool.need("curl", "python3");
        choose("call", "Best endurance");
        for (String language : List.of("curl", "python")) {
            assertThat(Double.parseDouble(printed(language))).isEqualTo(page.tile("best_endurance_h"));
        }
        choose("call", "Pack energy");
        assertThat(printed("curl")).isEmpty();
        assertThat(folder.resolve("pack_energy.svg")).content().startsWith("<svg ");
        assertThat(browser.all("#call option")).hasSizeGreaterThan(25);
    }

    private void choose(String select, String text) {
        browser.all("#" + select + " option").stream()
                .filter(option -> option.getText().strip().equals(text))
                .findFirst()
                .orElseThrow()
                .click();
    }

    /** What the call on the page prints in a terminal. */
    private String printed(String language) throws IOException, InterruptedException {
        choose("language", language.equals("curl") ? "curl" : "Python");
        String call = browser.find("#snippet").getDomProperty("textContent");
        Path script = Files.writeString(folder.resolve("call"), call);
        return printedBy(language.equals("curl") ? "bash" : "python3", script);
    }

    @Test
    void theCallsCanBeTypedElsewhere() throws IOException, InterruptedException {
        Tool.need("curl", "python3");
        page.type(LIMIT, "1000");
        page.type("/items/0/name", "wing's \"own\" \\ '''");
        browser.until("it is answered", () -> page.verdict().startsWith("Stop"));
        for (String language : List.of("curl", "python")) {
            JsonNode answer = MAPPER.readTree(printed(language));
            assertThat(answer.path("verdict").asText()).as(language).isEqualTo("stop");
            assertThat(answer.at("/key_figures/total_mass_g").asDouble()).isEqualTo(page.tile("total_mass_g"));
        }
        browser.find("#copy").click();
        browser.until("it is copied", () -> browser.find("#copied").getText().equals("Copied."));
    }

    private String printedBy(String command, Path script) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command, script.toString())
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }
}
