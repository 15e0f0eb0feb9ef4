package trestle.examples;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** The dashboard in a browser: where its parts are. */
final class Dashboard {
    /** What is typed, by where it belongs. */
    private static final Map<String, String> FIRST_FACTS = Map.of(
            "/airframe/wing/span_mm", "2800",
            "/airframe/wing/mean_chord_mm", "280",
            "/airframe/takeoff_mass_g", "6600",
            "/packs/0/layout", "7s3p",
            "/propulsion/propeller/size", "15x8",
            "/propulsion/motor/speed_constant_rpm_per_v", "320",
            "/flight/airspeed_m_per_s", "16");

    private final Browser browser;

    Dashboard(Browser browser) {
        this.browser = browser;
    }

    /** Opens the page with the example, whatever the browser kept, and waits for its answer. */
    void open(String url) {
        openAsKept(url);
        browser.find("#example").click();
        untilAnswered();
    }

    /** Opens the page with nothing kept. */
    void openAnew(String url) {
        openAsKept(url);
        browser.run("localStorage.clear()");
        openAsKept(url);
    }

    /** Opens the page, and waits until it can be used. */
    void openAsKept(String url) {
        browser.open(url);
        browser.until(
                "the page is drawn",
                () -> !browser.find("#verdict-text").getText().equals("No answer yet"));
    }

    void untilAnswered() {
        browser.until(
                "the document is answered",
                () -> !browser.find("#verdict").getDomAttribute("class").matches(".*(none|busy|fault).*"));
    }

    /** Tells the ten facts of the example's forerunner. */
    void tellFirstFacts() {
        FIRST_FACTS.forEach((at, text) -> fact(at).sendKeys(text));
        new Select(fact("/airframe/kind")).selectByVisibleText("payload pusher");
        new Select(fact("/packs/0/cell")).selectByVisibleText("21700 cylinder, for energy");
    }

    /** Begins another aircraft, in the same page. */
    void openAnother() {
        browser.find("#empty").click();
        tellFirstFacts();
        untilAnswered();
    }

    WebElement fact(String at) {
        return browser.find("#begin [data-at='" + at + "'] :is(input, select)");
    }

    String verdict() {
        return browser.find("#verdict-text").getText().replaceFirst("^\\W+", "");
    }

    /** The word that a verdict is said in. */
    static String said(JsonNode answer) {
        String verdict = answer.path("verdict").asText();
        return verdict.substring(0, 1).toUpperCase(Locale.ROOT) + verdict.substring(1);
    }

    /** The number behind a tile, unrounded. */
    double tile(String name) {
        return Double.parseDouble(
                browser.find("#tiles [data-name='" + name + "'] dd").getDomAttribute("title"));
    }

    static String field(String at) {
        return "#form [data-at='" + at + "']";
    }

    void type(String at, String text) {
        openSection(at);
        WebElement input = browser.find(field(at) + " input");
        browser.run("arguments[0].select()", input);
        input.sendKeys(text.isEmpty() ? Keys.BACK_SPACE : text);
    }

    /** Typing a document key by key would take minutes. */
    void write(WebElement area, String text) {
        browser.run("arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('input'))", area, text);
    }

    WebElement button(String inside, String name) {
        return browser.all(inside + " button").stream()
                .filter(button -> button.getAccessibleName().startsWith(name)
                        || button.getText().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + name + " in " + inside));
    }

    List<String> texts(String css) {
        return browser.all(css).stream().map(WebElement::getText).toList();
    }

    /** Unfolds the section that holds a field. */
    void openSection(String at) {
        browser.run("document.querySelector(arguments[0]).closest('details.section').open = true", field(at));
    }

    /** Unfolds everything, and waits until it is drawn. */
    void unfold() {
        browser.run("document.querySelectorAll('details').forEach((part) => { part.open = true; })");
        browser.until(
                "all is drawn",
                () -> !browser.all("[data-name='wire_sizing'] table").isEmpty());
    }
}
