package quadmean.support;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * A Chromium without a window. Where there is none on the PATH, tests that ask for it are skipped and a line on the console says
 * so; with {@code -Dquadmean.browser=required} they fail instead.
 */
public final class Browser implements AutoCloseable {
    private static final String MISSING =
            "BROWSER TESTS NOT RUN: there is no chromium with its chromedriver on the PATH"
                    + " (Debian: apt-get install chromium chromium-driver). Pages were not opened in a browser.";

    private static final Pattern PAGE_OF_PDF = Pattern.compile("/Type\\s*/Page\\b");
    private static final int HEIGHT = 900;

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Colours that a reader prefers. */
    public enum Scheme {
        LIGHT,
        DARK
    }

    /** Starts a browser, or ends the test in the way that is asked for where there is none. */
    public static Browser start() {
        Optional<Path> program = onPath("chromium", "chromium-browser", "google-chrome");
        Optional<Path> connection = onPath("chromedriver");
        if (program.isEmpty() || connection.isEmpty()) {
            if ("required".equals(System.getProperty("quadmean.browser"))) {
                throw new AssertionError(MISSING);
            }
            System.out.println(MISSING);
            assumeTrue(false, MISSING);
        }
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program.orElseThrow().toFile());
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage");
        Logger.getLogger("org.openqa.selenium").setLevel(Level.SEVERE); // it warns of what is not used here
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(connection.orElseThrow().toFile())
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
        return new Browser(driver);
    }

    private static Optional<Path> onPath(String... names) {
        String path = Objects.requireNonNullElse(System.getenv("PATH"), "");
        return Arrays.stream(names)
                .flatMap(name -> Stream.of(path.split(File.pathSeparator)).map(folder -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Opens a file on a screen so many pixels wide, in one of the schemes of colour. */
    public void open(Path page, int width, Scheme scheme) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", HEIGHT, "deviceScaleFactor", 1, "mobile", width < 500));
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(Map.of(
                                "name",
                                "prefers-color-scheme",
                                "value",
                                scheme.name().toLowerCase(Locale.ROOT)))));
        driver.get(page.toUri().toString());
    }

    /** Unfolds every part that unfolds. */
    public void unfold() {
        run("document.querySelectorAll('details').forEach(d => d.open = true)");
    }

    /** Leaves so many rows of each table: the rest is made alike, and the checks of axe-core take their time. */
    public void shorten(int rows) {
        run("document.querySelectorAll('tbody tr:nth-child(n+" + (rows + 1) + ")').forEach(r => r.remove())");
    }

    /** What a script returns. */
    public Object run(String script) {
        return driver.executeScript(script);
    }

    /** The same in words. */
    public String text(String script) {
        return String.valueOf(run(script));
    }

    /** Types keys into the element that has the focus. */
    public void type(CharSequence keys) {
        driver.switchTo().activeElement().sendKeys(keys);
    }

    /** What the console of the browser holds since the last call. */
    public List<String> console() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::toString)
                .toList();
    }

    /** Elements that reach beyond the right side of the screen though they do not scroll; nothing if there are none. */
    public String overflow() {
        return text("""
                const wide = document.documentElement.clientWidth + 0.5;
                return document.documentElement.scrollWidth <= wide ? '' : Array.from(
                    document.querySelectorAll('body *')).filter(e => e.getBoundingClientRect().right > wide
                        && !e.closest('.scroll table')).map(e => e.outerHTML.slice(0, 120)).join('\\n') || 'the page';
                """);
    }

    /** Charts of the page. */
    public int charts() {
        return ((Number) run("return document.querySelectorAll('figure svg').length")).intValue();
    }

    /** Charts that are empty, reach beyond the screen or lack words for those who cannot see them; nothing if there are none. */
    public String poorCharts() {
        return text("""
                return Array.from(document.querySelectorAll('figure')).filter(f => {
                    const svg = f.querySelector('svg');
                    const box = svg && svg.getBBox();
                    const seen = svg && svg.getBoundingClientRect();
                    const words = f.querySelector('[role=img]');
                    return !svg || box.width < 50 || box.height < 20 || seen.width < 100 || seen.height < 20
                        || seen.right > innerWidth || !words || !words.getAttribute('aria-label');
                }).map(f => f.id + ' ' + f.className).join(', ')
                """);
    }

    /** The page as PDF, on the paper that it asks for. */
    public Pdf print() {
        Map<String, Object> printed = driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
        byte[] bytes = Base64.getDecoder().decode(String.valueOf(printed.get("data")));
        Matcher pages = PAGE_OF_PDF.matcher(new String(bytes, StandardCharsets.ISO_8859_1));
        return new Pdf((int) pages.results().count(), bytes.length);
    }

    /**
     * A printed page.
     *
     * @param pages sheets of paper
     * @param bytes size of the file
     */
    public record Pdf(int pages, int bytes) {}

    /** Findings of axe-core that it calls serious or critical, one a line; nothing if there are none. */
    public String seriousFindings() throws IOException {
        try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
            driver.executeScript(new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8));
        }
        return String.valueOf(driver.executeAsyncScript("""
                const done = arguments[arguments.length - 1];
                axe.run(document, { resultTypes: ['violations'] }).then(found => done(found.violations
                    .filter(v => v.impact === 'serious' || v.impact === 'critical')
                    .map(v => v.id + ' (' + v.help + '), ' + v.nodes.length + ' times: '
                        + v.nodes.slice(0, 3).map(n => n.html.slice(0, 200) + ' ' + n.failureSummary).join(' | '))
                    .join('\\n')), e => done('axe did not run: ' + e));
                """));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
