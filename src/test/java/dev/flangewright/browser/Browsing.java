package dev.flangewright.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import dev.flangewright.testing.Chromium;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A real Chromium that people of the workshop look through, at desk or phone size. */
final class Browsing implements AutoCloseable {

  private static final List<String> QUIET =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  private final Playwright playwright;
  private final Browser browser;
  private final String address;

  Browsing(int port) {
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(Chromium.find().orElseThrow())
                    .setArgs(QUIET));
    address = "http://localhost:" + port;
  }

  BrowserContext desk() {
    return browser.newContext(
        new Browser.NewContextOptions().setBaseURL(address).setViewportSize(1280, 900));
  }

  /** A screen on the wall, or a desk in the dark. */
  BrowserContext screen(int width, int height, ColorScheme scheme) {
    return browser.newContext(
        new Browser.NewContextOptions()
            .setBaseURL(address)
            .setViewportSize(width, height)
            .setColorScheme(scheme));
  }

  BrowserContext phone() {
    return browser.newContext(phoneOptions());
  }

  BrowserContext phoneWithoutScripts() {
    return browser.newContext(phoneOptions().setJavaScriptEnabled(false));
  }

  BrowserContext phone(ColorScheme scheme, ReducedMotion motion) {
    return browser.newContext(phoneOptions().setColorScheme(scheme).setReducedMotion(motion));
  }

  private Browser.NewContextOptions phoneOptions() {
    return new Browser.NewContextOptions()
        .setBaseURL(address)
        .setViewportSize(390, 844)
        .setDeviceScaleFactor(2)
        .setHasTouch(true)
        .setIsMobile(true);
  }

  /** Everybody's pages; the browser stays open. */
  void closePages() {
    List.copyOf(browser.contexts()).forEach(BrowserContext::close);
  }

  /** A page of somebody of the demo build, signed in. */
  static Page signedIn(BrowserContext context, String name) {
    Page page = context.newPage();
    page.navigate("/sign-in");
    page.getByLabel("Name").fill(name);
    page.getByLabel("Password").fill("tidewing-" + name);
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Sign in")).click();
    page.waitForURL("**/");
    return page;
  }

  /** Keeps the whole page as a picture, for looking at. */
  static void picture(Page page, String name) {
    Path file = Path.of("target/pictures", name + ".png");
    page.screenshot(new Page.ScreenshotOptions().setPath(file).setFullPage(true));
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
