package trestle.examples;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.UnexpectedAlertBehaviour;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real browser without a window. */
final class Browser {
    /** An answer takes half a second; this is for a machine that is busy with other things. */
    private static final Duration LONGEST_WAIT = Duration.ofSeconds(30);

    private static final Path SCREENSHOTS = Path.of("target", "screenshots");

    /** Where it saves files to. */
    static final Path DOWNLOADS = downloads();

    private static final List<String> ARGUMENTS = List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--no-proxy-server",
            "--hide-scrollbars",
            "--lang=en");

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** The browser of all tests, started once; closed as they end. */
    static Browser shared() {
        Tool.need(command("chromium", "chromium-browser", "google-chrome").isPresent(), "chromium is not installed");
        Tool.need(command("chromedriver").isPresent(), "chromedriver is not installed");
        return Shared.BROWSER;
    }

    private static Browser start() {
        File browser = command("chromium", "chromium-browser", "google-chrome").orElseThrow();
        File control = command("chromedriver").orElseThrow();
        // It looks for a dialect of the browser's debugging protocol that is not used here.
        Logger.getLogger("org.openqa.selenium.devtools").setLevel(Level.OFF);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser);
        options.addArguments(ARGUMENTS);
        options.setUnhandledPromptBehaviour(UnexpectedAlertBehaviour.ACCEPT);
        options.setExperimentalOption("prefs", Map.of("download.default_directory", DOWNLOADS.toString()));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service =
                new ChromeDriverService.Builder().usingDriverExecutable(control).build();
        ChromeDriver driver = new ChromeDriver(service, options);
        Runtime.getRuntime().addShutdownHook(new Thread(driver::quit, "close the browser"));
        return new Browser(driver);
    }

    void open(String url) {
        driver.get(url);
    }

    /** The size of the window, in CSS pixels; a phone's is smaller than any window's. */
    void size(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** What the system is said to prefer. */
    void prefers(String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    /** How many sheets of paper of this size the page takes; unless it asks for another size itself. */
    int printedPages(double widthInches, double heightInches) {
        Object printed = driver.executeCdpCommand(
                        "Page.printToPDF",
                        Map.of("preferCSSPageSize", true, "paperWidth", widthInches, "paperHeight", heightInches))
                .get("data");
        String pdf = new String(Base64.getDecoder().decode((String) printed), StandardCharsets.ISO_8859_1);
        return (int) Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results().count();
    }

    /** Shows the page as for a printer, or as for a screen again. */
    void media(String media) {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", media));
    }

    WebElement find(String css) {
        return driver.findElement(By.cssSelector(css));
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    WebElement focused() {
        return driver.switchTo().activeElement();
    }

    @SuppressWarnings("unchecked")
    <T> T run(String script, Object... arguments) {
        return (T) driver.executeScript(script, arguments);
    }

    /** Waits until something holds; an element that is drawn anew meanwhile is asked again. */
    void until(String what, Supplier<Boolean> holds) {
        new WebDriverWait(driver, LONGEST_WAIT, Duration.ofMillis(100))
                .ignoring(StaleElementReferenceException.class)
                .withMessage(() -> what + "; the verdict is: " + find("body").getText())
                .until(waited -> holds.get());
    }

    /** What the page complained about since the last call. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Keeps what is to be seen, for people to look at. */
    void screenshot(String name) {
        try {
            Files.createDirectories(SCREENSHOTS);
            Files.write(SCREENSHOTS.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** The page of another tab that is opened meanwhile, as it stands; the tab is closed. */
    String opened(Runnable opening, String css) {
        String first = driver.getWindowHandle();
        opening.run();
        new WebDriverWait(driver, LONGEST_WAIT).until(d -> d.getWindowHandles().size() == 2);
        driver.getWindowHandles().stream()
                .filter(handle -> !handle.equals(first))
                .forEach(handle -> driver.switchTo().window(handle));
        until("the other page is there", () -> !all(css).isEmpty());
        String source = driver.getPageSource();
        driver.close();
        driver.switchTo().window(first);
        return source;
    }

    private static Path downloads() {
        try {
            return Files.createTempDirectory("downloads");
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static final class Shared {
        private static final Browser BROWSER = start();
    }

    private static Optional<File> command(String... names) {
        return Stream.of(names)
                .flatMap(name -> Stream.of(System.getenv("PATH").split(File.pathSeparator))
                        .map(place -> new File(place, name)))
                .filter(File::canExecute)
                .findFirst();
    }
}
