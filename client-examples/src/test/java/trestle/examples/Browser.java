package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.logging.Level;
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
final class Browser implements AutoCloseable {
    /** An answer takes half a second; this is for a machine that is busy with other things. */
    private static final Duration LONGEST_WAIT = Duration.ofSeconds(30);

    private static final Path SCREENSHOTS = Path.of("target", "screenshots");

    private static final List<String> ARGUMENTS =
            List.of(
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

    /**
     * Starts a browser; without one the test is skipped, but not in the build that decides.
     *
     * @param downloads folder that files are saved to
     */
    static Browser start(Path downloads) {
        Optional<File> browser = command("chromium", "chromium-browser", "google-chrome");
        Optional<File> control = command("chromedriver");
        boolean here = browser.isPresent() && control.isPresent();
        if ("true".equals(System.getenv("CI"))) {
            assertThat(here).as("CI needs chromium and chromedriver to open the pages").isTrue();
        }
        assumeTrue(here, "chromium and chromedriver are not both installed: no page is opened");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.orElseThrow());
        options.addArguments(ARGUMENTS);
        options.setUnhandledPromptBehaviour(UnexpectedAlertBehaviour.ACCEPT);
        options.setExperimentalOption(
                "prefs", Map.of("download.default_directory", downloads.toString()));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service =
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(control.orElseThrow())
                        .build();
        return new Browser(new ChromeDriver(service, options));
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
                Map.of(
                        "features",
                        List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
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
            Files.write(
                    SCREENSHOTS.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Override
    public void close() {
        driver.quit();
    }

    private static Optional<File> command(String... names) {
        return Stream.of(names)
                .flatMap(
                        name ->
                                Stream.of(System.getenv("PATH").split(File.pathSeparator))
                                        .map(place -> new File(place, name)))
                .filter(File::canExecute)
                .findFirst();
    }
}
