package dev.flangewright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import dev.flangewright.FlangewrightApplication;
import dev.flangewright.bench.AHeatTreatment;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.testing.NeedsBrowser;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;

/** The forming window on a phone, while the clock of the workshop goes on. */
@NeedsBrowser
class AfterTheQuenchTest {

  @TempDir static Path data;
  private static ConfigurableApplicationContext installation;

  private Browsing browsing;
  private BrowserContext phone;
  private AHeatTreatment heat;

  @BeforeAll
  static void open() {
    installation =
        new SpringApplicationBuilder(FlangewrightApplication.class)
            .initializers(context -> MovedClock.putInto((GenericApplicationContext) context))
            .run("--server.port=0", "--flangewright.data=" + data);
    installation.getBean(KeepAccounts.class).invented();
  }

  @AfterAll
  static void close() {
    installation.close();
  }

  @BeforeEach
  void takeAPhone() {
    browsing =
        new Browsing(
            Integer.parseInt(installation.getEnvironment().getProperty("local.server.port")));
    phone = browsing.phone();
    heat = AHeatTreatment.in(installation);
  }

  @AfterEach
  void closeBrowser() {
    browsing.close();
  }

  @Test
  void metal_that_has_hardened_is_not_set_unless_the_lead_lets_it_with_a_reason() {
    Page fitter = Browsing.signedIn(phone, "fitter");
    String piece = "/pieces/" + heat.piece("TW-F07-S1");
    fitter.navigate(piece);
    assertThat(fitter.getByLabel("Quenched at")).isVisible();
    Accessibility.hasNoViolations(fitter);
    press(fitter, "Finish solution treat and quench");
    assertThat(fitter.locator(".window-head")).containsText("Forming window: open");
    assertThat(fitter.locator(".window-head")).containsText("29 min");
    assertThat(fitter.locator("#forming-window")).containsText("must be within");
    Browsing.picture(fitter, "quench-phone");
    Illustration.head(fitter, "quench-phone");
    Accessibility.hasNoViolations(fitter);

    clock().forwardMinutes(31);
    // what was on the page before still offers it: the server refuses
    press(fitter, "Start set to template");
    assertThat(fitter.locator(".refusal").first()).containsText("forming window is past");
    assertThat(fitter.locator(".window-head")).containsText("Forming window: past");

    Page volunteer = Browsing.signedIn(browsing.phone(), "volunteer");
    volunteer.navigate(piece);
    assertThat(button(volunteer, "Start set to template")).hasCount(0);
    assertThat(button(volunteer, "Let it be formed past its window")).hasCount(0);
    assertThat(volunteer.locator("main")).containsText("the lead, with a reason");
    Browsing.picture(volunteer, "window-past-phone");
    Accessibility.hasNoViolations(volunteer);

    Page lead = Browsing.signedIn(browsing.phone(), "lead");
    lead.navigate(piece);
    lead.getByLabel("Why it may be formed past its window").fill("Coupons bent without a crack");
    Accessibility.hasNoViolations(lead);
    press(lead, "Let it be formed past its window");
    assertThat(lead.locator("#forming-window")).containsText("Coupons bent without a crack");

    volunteer.reload();
    press(volunteer, "Start set to template");
    assertThat(volunteer.locator("h1")).hasText("Now: set to template");
  }

  @Test
  void hours_in_the_freezer_leave_the_rest_of_the_window() {
    Page page = Browsing.signedIn(phone, "fitter");
    page.navigate("/pieces/" + heat.piece("TW-F07-S1"));
    press(page, "Finish solution treat and quench");
    assertThat(page.locator(".window-head")).containsText("Forming window: open");
    clock().forwardMinutes(5);
    page.reload();
    page.getByLabel("The freezer shows").fill("-20");
    press(page, "Into the freezer");
    assertThat(page.locator(".window-head")).containsText("Forming window: in the freezer");
    assertThat(button(page, "Start set to template")).hasCount(0);
    Browsing.picture(page, "freezer-phone");
    Accessibility.hasNoViolations(page);

    clock().forwardMinutes(4 * 60);
    page.reload();
    assertThat(page.locator("#forming-window"))
        .containsText(Pattern.compile("clock stands still with 2[34] min left"));
    press(page, "Out of the freezer");
    assertThat(page.locator(".window-head")).containsText("Forming window: open");
    press(page, "Start set to template");
    assertThat(page.locator("h1")).hasText("Now: set to template");
  }

  @Test
  void without_a_script_the_sentences_stand() {
    BrowserContext plain = browsing.phoneWithoutScripts();
    Page page = Browsing.signedIn(plain, "fitter");
    page.navigate("/pieces/" + heat.piece("TW-F07-S1"));
    press(page, "Finish solution treat and quench");
    assertThat(page.locator("#forming-window")).containsText("must be within 29 min");
    assertThat(page.locator("#forming-window")).containsText("As of");
    page.getByLabel("The freezer shows").fill("-20");
    press(page, "Into the freezer");
    assertThat(page.locator(".window-head")).containsText("in the freezer");
  }

  private static MovedClock clock() {
    return installation.getBean(MovedClock.class);
  }

  private static void press(Page page, String words) {
    button(page, words).click();
    page.waitForLoadState();
  }

  private static Locator button(Page page, String words) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words).setExact(true));
  }
}
