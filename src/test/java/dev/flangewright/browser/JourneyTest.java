package dev.flangewright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import dev.flangewright.testing.NeedsBrowser;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.core.io.ClassPathResource;
import org.springframework.test.context.ActiveProfiles;

/** The main job as people of the workshop do it, each at their own screen. */
@SpringBootTest(
    webEnvironment = WebEnvironment.RANDOM_PORT,
    properties = "spring.datasource.url=jdbc:h2:mem:journey;DB_CLOSE_DELAY=-1")
@ActiveProfiles("demo")
@NeedsBrowser
class JourneyTest {

  private static final String BUILD = "Trial hull (invented)";
  private static final String PART = "TW-F05-S1";

  @LocalServerPort private int port;
  private Browsing browsing;

  @BeforeEach
  void openBrowser() {
    browsing = new Browsing(port);
  }

  @AfterEach
  void closeBrowser() {
    browsing.close();
  }

  @Test
  void from_two_files_to_a_scrapped_piece_and_back_to_the_overview() throws IOException {
    Page lead = Browsing.signedIn(browsing.desk(), "lead");
    int build = importTheFiles(lead);
    String part = readThePartSheet(lead, build);
    String piece = beginAPiece(lead, part);

    Page volunteer = Browsing.signedIn(browsing.phone(), "volunteer");
    volunteer.navigate(piece);
    work(volunteer, "lay out and cut", "0.8");
    press(volunteer, "Start tooling holes");
    Illustration.head(volunteer, "piece-phone");
    volunteer.getByLabel("Hours spent").fill("0.3");
    press(volunteer, "Finish tooling holes");
    work(volunteer, "cutouts", "0.4");
    press(volunteer, "Start edges deburred and polished");
    assertThat(volunteer.locator("main")).containsText("It cannot go on yet");
    assertThat(volunteer.locator("main")).containsText("an inspector or the lead");
    assertThat(button(volunteer, "Record the check as done")).hasCount(0);
    Illustration.head(volunteer, "held-phone");

    Page inspector = Browsing.signedIn(browsing.desk(), "inspector");
    inspector.navigate(piece);
    press(inspector, "Record the check as done");

    volunteer.reload();
    volunteer.getByLabel("Hours spent").fill("1.2");
    press(volunteer, "Finish edges deburred and polished");
    press(volunteer, "Start first flange in passes");

    scrap(Browsing.signedIn(browsing.desk(), "fitter"), piece);
    overviewCounts(lead, build);
  }

  @Test
  void the_pages_of_the_demo_hold_what_they_promise_at_desk_and_phone_size() {
    for (BrowserContext size : List.of(browsing.desk(), browsing.phone())) {
      Page page = Browsing.signedIn(size, "lead");
      String suffix = page.viewportSize().width < 500 ? "-phone" : "";
      look(page, "/builds/1", "overview" + suffix, "How far is Tidewing?");
      look(page, "/builds/1/parts", "register" + suffix, "TW-F07-S1");
      look(page, "/builds/1/bench", "bench" + suffix, "What needs forming next?");
      look(page, "/builds/1/blocks", "blocks" + suffix, "Which blocks are ready?");
      followed(page, "TW-B04-S3", "block-set" + suffix, "Is TW-B04-S3 ready?");
      look(page, "/blocks/1/photos", "photos" + suffix, "There is no photo yet.");
      look(page, "/builds/1/stock", "stock" + suffix, "Which metal may be cut?");
      followed(page, "B-3", "batch" + suffix, "May B-3 be cut?");
      look(page, "/builds/1/quality", "quality" + suffix, "Why were pieces scrapped?");
      look(page, "/builds/1/journal", "journal" + suffix, "Who changed what?");
      look(page, "/builds/1/journal/verdict", "verdict" + suffix, "fit together");
      look(page, "/builds/1/routes", "routes" + suffix, "Edges deburred and polished");
      look(page, "/builds/1/import", "import" + suffix, "register.csv");
      look(page, "/people", "people" + suffix, "inspector");
      look(page, "/help", "help" + suffix, "blank");
      look(page, "/materials", "materials" + suffix, "2024");
      look(page, "/quality/causes", "causes" + suffix, "deburred");
    }
  }

  @Test
  void the_lead_drafts_the_next_version_of_a_route_on_a_phone() {
    Page page = Browsing.signedIn(browsing.phone(), "lead");
    page.navigate("/builds/1/routes");
    page.getByRole(
            AriaRole.LINK, new Page.GetByRoleOptions().setName("Heat treated").setExact(true))
        .click();
    assertThat(page.locator("main")).containsText("Released: it does not change any more");
    Accessibility.hasNoViolations(page);
    press(page, "Draft the next version");
    Locator first = page.locator(".route-stages > li").first();
    first.locator("summary").filter(new Locator.FilterOptions().setHasText("Add a check")).click();
    Locator check = first.locator("form[action$='/checks']");
    check.getByLabel("What is checked").fill("Grain marked on the blank");
    check.locator("button").click();

    assertThat(page.locator("main")).containsText("check: Grain marked on the blank");
    page.locator("details").all().forEach(one -> one.evaluate("e => e.open = true"));
    noSidewaysScroll(page);
    Accessibility.hasNoViolations(page);
    press(page, "Throw this draft away");
    assertThat(page.locator("main")).containsText("Which parts take which route?");
  }

  @Test
  void the_documentation_shows_the_pages_of_the_demo() {
    Page desk = Browsing.signedIn(browsing.desk(), "lead");
    show(desk, "/builds/1", "overview", "How far is Tidewing?");
    show(desk, "/builds/1/frames/F10", "frame", "How far is frame F10?");
    show(desk, "/builds/1/parts", "register", "TW-F07-S1");
    show(desk, "/builds/1/quality", "quality", "Why were pieces scrapped?");
    Page phone = Browsing.signedIn(browsing.phone(), "volunteer");
    show(phone, "/builds/1/bench", "bench-phone", "What needs forming next?");
  }

  private int importTheFiles(Page lead) throws IOException {
    lead.navigate("/builds/new");
    lead.getByLabel("Name").fill(BUILD);
    lead.locator("main button[type=submit]").click();
    lead.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Import").setExact(true))
        .click();
    lead.locator("input[name=register]").setInputFiles(file("register.csv"));
    lead.locator("input[name=contours]").setInputFiles(file("contours.csv"));
    lead.locator("main form button[type=submit]").first().click();
    assertThat(lead.locator("main")).containsText("What would change?", patient());
    assertThat(lead.locator("main")).containsText("New parts: 62");
    Illustration.head(lead, "import-preview");
    press(lead, "Import these rows");
    assertThat(lead.locator("main")).containsText("The rows are stored", patient());
    var found = Pattern.compile("/builds/(\\d+)/").matcher(lead.url());
    assertThat(found.find()).isTrue();
    return Integer.parseInt(found.group(1));
  }

  private static String readThePartSheet(Page lead, int build) {
    lead.navigate("/builds/" + build + "/parts?q=" + PART);
    lead.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(PART).setExact(true)).click();
    Locator page = lead.locator("main");
    for (String words :
        List.of("Setback", "Bend allowance", "Peak edge strain", "Edge to gather", "Block angle")) {
      assertThat(page).containsText(words);
    }
    assertThat(page.locator("svg.drawing").first()).isVisible();
    noSidewaysScroll(lead);
    Browsing.picture(lead, "part-sheet");
    Illustration.head(lead, "part-drawing");
    Illustration.from(lead, "h2:has-text('The outer edge')", "part-figures");
    return lead.url();
  }

  private static String beginAPiece(Page lead, String part) {
    lead.navigate(part);
    press(lead, "Begin piece 1");
    assertThat(lead).hasURL(Pattern.compile(".*/pieces/\\d+.*"));
    return lead.url().replaceAll("[?#].*", "");
  }

  private static void work(Page page, String stage, String hours) {
    press(page, "Start " + stage);
    page.getByLabel("Hours spent").fill(hours);
    press(page, "Finish " + stage);
  }

  private static void scrap(Page fitter, String piece) {
    fitter.navigate(piece);
    fitter
        .getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Scrap this piece…"))
        .click();
    fitter.locator("select[name=cause]").selectOption("edge-not-deburred");
    fitter.locator("textarea[name=note]").fill("Crack at station 7, 4 mm long");
    Illustration.head(fitter, "scrap");
    fitter.locator("textarea[name=note]").fill("<b>Crack</b> at station 7, 4 mm long");
    press(fitter, "Scrap this piece");
    assertThat(fitter.locator("main")).containsText("<b>Crack</b> at station 7");
    assertThat(button(fitter, "Begin piece 2 of " + PART)).isVisible();
    Browsing.picture(fitter, "piece-scrapped");
  }

  private static void overviewCounts(Page lead, int build) {
    lead.navigate("/builds/" + build);
    Locator page = lead.locator("main");
    assertThat(page).containsText("How far is " + BUILD);
    assertThat(page).containsText("1 piece was");
    assertThat(page).containsText("was scrapped");
    noSidewaysScroll(lead);
  }

  private static void look(Page page, String address, String name, String words) {
    page.navigate(address);
    assertThat(page.locator("main")).containsText(words);
    noSidewaysScroll(page);
    Browsing.picture(page, name);
    Accessibility.hasNoViolations(page);
  }

  /** A page without a fixed address, by the link that leads to it from the present one. */
  private static void followed(Page page, String link, String name, String words) {
    page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(link).setExact(true)).click();
    page.waitForLoadState();
    look(page, page.url(), name, words);
  }

  private static void show(Page page, String address, String name, String words) {
    page.navigate(address);
    assertThat(page.locator("main")).containsText(words);
    Illustration.head(page, name);
  }

  private static void noSidewaysScroll(Page page) {
    Object over = page.evaluate("document.documentElement.scrollWidth - window.innerWidth");
    assertThat(((Number) over).intValue()).as("page wider than the screen").isLessThanOrEqualTo(0);
  }

  private static void press(Page page, String words) {
    button(page, words).click();
    page.waitForLoadState();
  }

  private static Locator button(Page page, String words) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words).setExact(true));
  }

  private static FilePayload file(String name) throws IOException {
    return new FilePayload(
        name, "text/csv", new ClassPathResource("demo/" + name).getContentAsByteArray());
  }

  private static com.microsoft.playwright.assertions.LocatorAssertions.ContainsTextOptions
      patient() {
    return new com.microsoft.playwright.assertions.LocatorAssertions.ContainsTextOptions()
        .setTimeout(60_000);
  }
}
