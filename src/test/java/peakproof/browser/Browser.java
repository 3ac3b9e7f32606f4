package peakproof.browser;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A real browser without a window, for tests of pages: what they load, how they fit, what a
 * keyboard reaches, what axe-core has against them. Where Chromium or axe-core is not there a test
 * is skipped and says so; in a pipeline ({@code CI=true}) it fails.
 */
public final class Browser implements AutoCloseable {
  private static final Path AXE = Path.of("target/axe/package/axe.min.js");
  private static final List<String> NAMES = List.of("chromium", "chromium-browser");
  private static final int MOST_SECONDS = 30;

  private final Process process;
  private final Path profile;
  private final DevTools tools;

  /**
   * How a page is looked at.
   *
   * @param width of the window, CSS pixels
   * @param scale device pixels to a CSS pixel
   * @param media {@code screen} or {@code print}
   */
  public record View(int width, int height, double scale, boolean dark, String media) {
    /** A window on a desk. */
    public static final View DESK = new View(1280, 900, 1, false, "screen");

    /** The same with everything twice as large. */
    public static final View TWICE = new View(640, 450, 2, false, "screen");

    /** A small telephone. */
    public static final View PHONE = new View(360, 740, 2, false, "screen");

    /** An A4 sheet between margins of 14 mm, at 96 pixels to the inch. */
    public static final View A4 = new View(688, 1016, 1, false, "print");

    /** The same at night. */
    public View atNight() {
      return new View(width, height, scale, true, media);
    }
  }

  private Browser(Process process, Path profile, DevTools tools) {
    this.process = process;
    this.profile = profile;
    this.tools = tools;
  }

  /** Starts one, or skips the test. */
  public static Browser start() {
    String program = NAMES.stream().filter(Browser::onPath).findFirst().orElse(null);
    if (program == null) {
      missing("Chromium is not installed (Debian: apt-get install chromium)");
    }
    try {
      return start(program);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static void missing(String what) {
    if ("true".equals(System.getenv("CI"))) {
      fail(what);
    }
    abort(what + ": pages are not looked at");
  }

  private static boolean onPath(String program) {
    return Stream.of(System.getenv("PATH").split(":"))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }

  private static Browser start(String program) throws IOException, InterruptedException {
    Path profile = Files.createTempDirectory("browser");
    Process process =
        new ProcessBuilder(
                program,
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--hide-scrollbars",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile,
                "about:blank")
            .redirectErrorStream(true)
            .redirectOutput(profile.resolve("log").toFile())
            .start();
    Path port = profile.resolve("DevToolsActivePort");
    for (int i = 0; !Files.exists(port) || Files.size(port) == 0; i++) {
      if (i > 10 * MOST_SECONDS || !process.isAlive()) {
        process.destroyForcibly();
        throw new IOException(Files.readString(profile.resolve("log")));
      }
      Thread.sleep(100);
    }
    String where = "http://127.0.0.1:" + Files.readAllLines(port).get(0) + "/json/list";
    String list =
        HttpClient.newHttpClient()
            .send(HttpRequest.newBuilder(URI.create(where)).build(), BodyHandlers.ofString())
            .body();
    JsonNode page = new com.fasterxml.jackson.databind.ObjectMapper().readTree(list);
    DevTools tools = new DevTools(URI.create(page.findValue("webSocketDebuggerUrl").asText()));
    tools.call("Page.enable", Map.of());
    return new Browser(process, profile, tools);
  }

  /** Opens a page and waits until it is there. */
  public void open(Path page, View view) {
    tools.call(
        "Emulation.setDeviceMetricsOverride",
        Map.of(
            "width", view.width(),
            "height", view.height(),
            "deviceScaleFactor", view.scale(),
            "mobile", false));
    tools.call(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            view.media(),
            "features",
            List.of(
                Map.of("name", "prefers-color-scheme", "value", view.dark() ? "dark" : "light"))));
    tools.forgetEvents();
    tools.call("Page.navigate", Map.of("url", page.toUri().toString()));
    tools.await("Page.loadEventFired");
  }

  /** What an expression of JavaScript comes to, promises waited for. */
  public JsonNode evaluate(String expression) {
    JsonNode told =
        tools.call(
            "Runtime.evaluate",
            Map.of("expression", expression, "returnByValue", true, "awaitPromise", true));
    if (told.has("exceptionDetails")) {
      throw new IllegalStateException(told.get("exceptionDetails").toString());
    }
    return told.get("result").path("value");
  }

  /** Everything the page loaded besides itself. */
  public List<String> loaded() {
    return texts(evaluate("performance.getEntriesByType('resource').map(one => one.name)"));
  }

  /** Pixels by which the page is wider than its window. */
  public int overflow() {
    return evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
        .asInt();
  }

  /** What axe-core finds wrong, a line a kind; skips the test where axe-core is not there. */
  public List<String> violations() {
    if (!Files.exists(AXE)) {
      missing(
          AXE
              + " is not there (mkdir -p target/axe && cd target/axe && npm pack axe-core@4.14.1"
              + " && tar xzf axe-core-*.tgz)");
    }
    try {
      evaluate(Files.readString(AXE) + ";0");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts(
        evaluate(
            "axe.run().then(all => all.violations.map(one => one.id + ': ' +"
                + " one.nodes.map(node => node.html.slice(0, 200)).join(' | ')))"));
  }

  /** Presses a key that writes nothing: Tab, Enter, Escape. */
  public void press(String key) {
    int code = Map.of("Tab", 9, "Enter", 13, "Escape", 27).get(key);
    String text = key.equals("Enter") ? "\r" : "";
    tools.call("Input.dispatchKeyEvent", key("keyDown", key, code, text));
    tools.call("Input.dispatchKeyEvent", key("keyUp", key, code, ""));
  }

  private static Map<String, ?> key(String type, String key, int code, String text) {
    return Map.of(
        "type", type, "key", key, "code", key, "windowsVirtualKeyCode", code, "text", text);
  }

  /** The page as a PDF on A4. */
  public byte[] pdf() {
    JsonNode told =
        tools.call(
            "Page.printToPDF",
            Map.of(
                "preferCSSPageSize",
                true,
                "printBackground",
                false,
                "transferMode",
                "ReturnAsBase64"));
    return Base64.getDecoder().decode(told.get("data").asText());
  }

  /** What is in the window, as PNG. */
  public byte[] picture() {
    JsonNode told = tools.call("Page.captureScreenshot", Map.of("format", "png"));
    return Base64.getDecoder().decode(told.get("data").asText());
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(one -> texts.add(one.asText()));
    return texts;
  }

  @Override
  public void close() throws IOException {
    tools.close();
    process.destroy();
    try {
      if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly().waitFor();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    try (Stream<Path> all = Files.walk(profile)) {
      all.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    }
  }
}
