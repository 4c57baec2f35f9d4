package dev.flangewright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import dev.flangewright.FlangewrightApplication;
import dev.flangewright.bench.AWorkshop;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.photos.PhotoFiles;
import dev.flangewright.testing.NeedsBrowser;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;

/** Work at the bench while the Wi-Fi, or the installation itself, is away. */
@NeedsBrowser
class WithoutNetworkTest {

  @TempDir static Path data;
  private static ConfigurableApplicationContext installation;
  private static int port;

  private Browsing browsing;
  private BrowserContext phone;
  private Page page;
  private long piece;

  @BeforeAll
  static void open() {
    installation = start(0);
    port = Integer.parseInt(installation.getEnvironment().getProperty("local.server.port"));
    installation.getBean(KeepAccounts.class).invented();
  }

  @AfterAll
  static void close() {
    installation.close();
  }

  @BeforeEach
  void openAPieceOnThePhone() {
    AWorkshop workshop = AWorkshop.in(installation);
    piece = workshop.begin(workshop.part("TW-F07-S1")).id();
    browsing = new Browsing(port);
    phone = browsing.phone();
    page = Browsing.signedIn(phone, "volunteer");
    page.navigate("/builds/" + workshop.buildId() + "/bench");
    String kept =
        "async () => (await (await caches.open('pages')).match('/pieces/%d')) !== undefined"
            .formatted(piece);
    page.waitForCondition(() -> Boolean.TRUE.equals(page.evaluate(kept)));
  }

  @AfterEach
  void closeBrowser() {
    browsing.close();
  }

  @Test
  void three_entries_made_while_the_network_and_then_the_server_was_away_come_in_once_in_order() {
    phone.setOffline(true);
    page.navigate("/pieces/" + piece);
    assertThat(strip()).containsText("The network is away. This page is as it was on");
    press("Start lay out and cut");
    assertThat(strip()).containsText("1 entry waits to be sent");
    installation.close();
    phone.setOffline(false);
    page.getByLabel("Hours spent").fill("1.5");
    press("Finish lay out and cut");
    assertThat(strip()).containsText("2 entries wait to be sent");
    press("Start tooling holes");
    assertThat(strip()).containsText("3 entries wait to be sent");
    page.getByText("What waits").click();
    Accessibility.hasNoViolations(page);
    Browsing.picture(page, "waiting-phone");
    Illustration.head(page, "waiting-phone");

    installation = start(port);
    press("Send now");

    assertThat(strip().locator("[data-part=count]")).hasText("");
    assertThat(page.locator("h1")).hasText("Now: tooling holes");
    assertThat(logged())
        .containsExactly("START lay-out-and-cut", "FINISH lay-out-and-cut", "START tooling-holes");
  }

  @Test
  void an_entry_outlasts_the_end_of_the_sign_in_and_is_sent_by_whoever_made_it_alone() {
    page.navigate("/pieces/" + piece);
    phone.clearCookies();
    press("Start lay out and cut");
    assertThat(page.getByRole(AriaRole.LINK, named("Sign in to send"))).isVisible();
    assertThat(strip()).containsText("1 entry waits to be sent");

    signIn("fitter");
    page.getByText("What waits").click();
    assertThat(strip()).containsText("sent only when volunteer signs in here");
    assertThat(logged()).isEmpty();
    page.locator("form[action$='/sign-out']").evaluate("form => form.requestSubmit()");
    page.waitForURL("**/sign-in?signedOut");
    assertThat(page.evaluate("async () => (await caches.has('pages'))")).isEqualTo(false);

    signIn("volunteer");
    assertThat(strip().locator("[data-part=count]")).hasText("");
    assertThat(logged()).containsExactly("START lay-out-and-cut");
  }

  @Test
  void an_entry_that_is_refused_later_stops_those_after_it_and_is_dropped_by_hand() {
    page.navigate("/pieces/" + piece);
    phone.setOffline(true);
    press("Start lay out and cut");
    press("Finish lay out and cut");
    assertThat(strip()).containsText("2 entries wait to be sent");
    Page lead = Browsing.signedIn(browsing.desk(), "lead");
    lead.navigate("/pieces/" + piece);
    button(lead, "Start lay out and cut").click();
    assertThat(lead.locator("h1")).hasText("Now: lay out and cut");

    phone.setOffline(false);
    press("Send now");

    assertThat(strip()).containsText("1 entry waits to be sent; 1 entry was refused");
    assertThat(strip()).containsText("lead started \"Lay out and cut\"");
    assertThat(strip()).containsText("Waits for the refused entry before it.");
    Accessibility.hasNoViolations(page);
    press("Drop this entry");
    assertThat(strip().locator("[data-part=count]")).hasText("");
    assertThat(logged()).containsExactly("START lay-out-and-cut", "FINISH lay-out-and-cut");
  }

  @Test
  void without_the_network_a_check_an_inspection_and_taking_back_are_not_offered() {
    page.navigate("/pieces/" + piece);
    press("Start lay out and cut");
    assertThat(page.locator("h1")).hasText("Now: lay out and cut");
    page.locator("summary:has-text('Take back the last entry')").click();

    phone.setOffline(true);

    assertThat(button(page, "Take back the last entry")).isDisabled();
    assertThat(page.getByText("Needs the network.").first()).isVisible();
    assertThat(button(page, "Finish lay out and cut")).isEnabled();
  }

  @Test
  void a_photo_needs_the_network_says_so_and_is_not_taken_for_an_entry() {
    page.navigate("/pieces/" + piece);
    page.locator("input[name=photo]")
        .setInputFiles(new FilePayload("p.jpg", "image/jpeg", PhotoFiles.jpeg(900, 600)));
    phone.setOffline(true);
    assertThat(button(page, "Add a photo")).isDisabled();
    assertThat(page.locator("form[action$='/photos'] .needs-network"))
        .hasText("Needs the network.");
    Accessibility.hasNoViolations(page);

    phone.setOffline(false);
    page.navigate("/pieces/" + piece);
    page.locator("input[name=photo]")
        .setInputFiles(new FilePayload("p.jpg", "image/jpeg", PhotoFiles.jpeg(900, 600)));
    page.getByLabel("What it shows").fill("burr at station 4");
    press("Add a photo");

    Locator picture = page.locator("img[alt='burr at station 4']");
    assertThat(picture).isVisible();
    assertThat(strip().locator("[data-part=count]")).hasText("");
    assertThat(picture.evaluate("img => img.decode().then(() => img.naturalWidth)")).isEqualTo(400);
    Accessibility.hasNoViolations(page);
    page.getByRole(AriaRole.LINK, named("All photos, take one off")).click();
    Accessibility.hasNoViolations(page);
    Browsing.picture(page, "photos-phone");
    picture.click();
    page.waitForURL("**/photos/*");
    assertThat(page.evaluate("document.images[0].naturalWidth")).isEqualTo(900);
  }

  private static ConfigurableApplicationContext start(int onPort) {
    return new SpringApplicationBuilder(FlangewrightApplication.class)
        .run("--server.port=" + onPort, "--flangewright.data=" + data);
  }

  private void signIn(String name) {
    page.navigate("/sign-in");
    page.getByLabel("Name").fill(name);
    page.getByLabel("Password").fill("tidewing-" + name);
    button(page, "Sign in").click();
    page.waitForURL("**/");
  }

  private List<String> logged() {
    return installation
        .getBean(JdbcTemplate.class)
        .queryForList(
            "select action || ' ' || stage_code from stage_entry where piece_id = ? order by ordinal",
            String.class,
            piece);
  }

  private Locator strip() {
    return page.locator("#waiting");
  }

  private void press(String words) {
    button(page, words).click();
  }

  private static Locator button(Page page, String words) {
    return page.getByRole(AriaRole.BUTTON, named(words));
  }

  private static Page.GetByRoleOptions named(String words) {
    return new Page.GetByRoleOptions().setName(words).setExact(true);
  }
}
