package dev.flangewright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static dev.flangewright.bench.AWorkshop.as;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.ReducedMotion;
import com.microsoft.playwright.options.RequestOptions;
import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.LogStage;
import dev.flangewright.bench.Piece;
import dev.flangewright.people.Role;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Work at the vice with a phone, with scripts and without; and the board on the wall. */
class BenchJourneyTest extends InTheWorkshop {

  private static final String COUNT_TAPS =
      "addEventListener('pointerdown', e => e.isTrusted"
          + " && localStorage.setItem('taps', 1 + Number(localStorage.getItem('taps'))), true)";

  private AWorkshop workshop;
  private Piece piece;

  @BeforeEach
  void aPieceIsBegun() {
    workshop = AWorkshop.in(application);
    piece = workshop.begin(workshop.part("TW-F07-S1"));
  }

  @AfterEach
  void everybodyGoesHome() {
    browsing.closePages();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void a_volunteer_logs_a_stage_in_at_most_four_taps_from_the_list(boolean scripts) {
    Page page = phoneOf("volunteer", scripts);
    page.addInitScript(COUNT_TAPS);
    page.navigate(bench());
    Thumb thumb = new Thumb(page);

    thumb.tap(AriaRole.LINK, "Open piece 1");
    thumb.tap(AriaRole.BUTTON, "Start lay out and cut");
    thumb.tap(AriaRole.BUTTON, "Finish lay out and cut");

    assertThat(page.locator("h1")).hasText("Next: tooling holes");
    assertThat(logged())
        .containsExactly("volunteer START lay-out-and-cut", "volunteer FINISH lay-out-and-cut");
    assertThat(thumb.taps()).isLessThanOrEqualTo(4);
    if (scripts) {
      assertThat(page.evaluate("Number(localStorage.getItem('taps'))")).isEqualTo(thumb.taps());
    }
  }

  @Test
  void of_two_phones_on_one_piece_the_second_is_told_what_happened_and_goes_on_from_there() {
    Page volunteer = phoneOf("volunteer");
    Page fitter = phoneOf("fitter");
    volunteer.navigate(page());
    fitter.navigate(page());

    new Thumb(volunteer).tap(AriaRole.BUTTON, "Start lay out and cut");
    assertThat(volunteer.locator("h1")).hasText("Now: lay out and cut");
    new Thumb(fitter).tap(AriaRole.BUTTON, "Start lay out and cut");

    assertThat(fitter.locator(".refusal"))
        .containsText("has changed since you opened it: volunteer started \"Lay out and cut\"");
    assertThat(logged()).containsExactly("volunteer START lay-out-and-cut");
    new Thumb(fitter).tap(AriaRole.BUTTON, "Finish lay out and cut");
    assertThat(fitter.locator("h1")).hasText("Next: tooling holes");
    assertThat(logged())
        .containsExactly("volunteer START lay-out-and-cut", "fitter FINISH lay-out-and-cut");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void a_hold_point_is_refused_until_the_inspector_has_done_its_check(boolean scripts) {
    workshop.bringTo(piece, "edges");
    Page volunteer = phoneOf("volunteer", scripts);
    volunteer.navigate(page());
    new Thumb(volunteer).tap(AriaRole.BUTTON, "Start edges deburred and polished");
    assertThat(volunteer.locator(".refusal")).containsText("an inspector or the lead");
    assertThat(button(volunteer, "Finish edges deburred and polished")).hasCount(0);
    APIResponse forced = finish(volunteer, "edges");
    assertThat(forced.status()).isEqualTo(409);
    assertThat(forced.text()).contains("is a hold point. Missing:");

    Page inspector = phoneOf("inspector", scripts);
    inspector.navigate(bench());
    Thumb thumb = new Thumb(inspector);
    thumb.tap(AriaRole.LINK, "Do the check");
    thumb.tap(AriaRole.BUTTON, "Record the check as done");
    assertThat(inspector.locator("h1")).hasText("Now: edges deburred and polished");

    volunteer.reload();
    new Thumb(volunteer).tap(AriaRole.BUTTON, "Finish edges deburred and polished");
    assertThat(volunteer.locator("h1")).hasText("Next: first flange in passes");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void a_slip_is_undone_with_one_tap_and_without_a_reason(boolean scripts) {
    Page volunteer = phoneOf("volunteer", scripts);
    volunteer.navigate(page());
    Thumb thumb = new Thumb(volunteer);
    thumb.tap(AriaRole.BUTTON, "Start lay out and cut");
    assertThat(justLogged(volunteer)).containsText("Logged: started “Lay out and cut”.");
    if (scripts) {
      Illustration.head(volunteer, "undo-phone");
      Accessibility.hasNoViolations(volunteer);
    }

    thumb.tap(AriaRole.BUTTON, "Undo");

    assertThat(volunteer.locator("h1")).hasText("Next: lay out and cut");
    assertThat(justLogged(volunteer)).hasCount(0);
    assertThat(logged())
        .containsExactly("volunteer START lay-out-and-cut", "volunteer UNDO lay-out-and-cut");
  }

  @ParameterizedTest
  @EnumSource(ReducedMotion.class)
  void the_offer_to_undo_leaves_by_itself_unless_somebody_is_in_it(ReducedMotion motion) {
    Page volunteer = Browsing.signedIn(browsing.phone(ColorScheme.LIGHT, motion), "volunteer");
    volunteer.navigate(page());
    new Thumb(volunteer).tap(AriaRole.BUTTON, "Start lay out and cut");
    assertThat(justLogged(volunteer)).isVisible();
    assertThat(volunteer.evaluate("document.getAnimations().map(a => a.effect.getTiming().delay)"))
        .isEqualTo(List.of(10_000));

    button(volunteer, "Undo").focus();
    assertThat(volunteer.evaluate("document.getAnimations().length")).isEqualTo(0);
    volunteer.locator("h1").evaluate("() => document.activeElement.blur()");
    volunteer.evaluate("document.getAnimations().forEach(animation => animation.finish())");

    assertThat(justLogged(volunteer)).isHidden();
    assertThat(
            volunteer.locator(
                "summary", new Page.LocatorOptions().setHasText("Take back the last entry")))
        .isVisible();
  }

  @Test
  void a_part_number_typed_at_the_bench_opens_its_piece() {
    Page volunteer = phoneOf("volunteer");
    volunteer.navigate(bench());
    volunteer.getByLabel("Piece in hand? Its part number").fill("tw f07 s1 1");

    new Thumb(volunteer).tap(AriaRole.BUTTON, "Open it");

    assertThat(volunteer.locator("main")).hasAttribute("data-piece", String.valueOf(piece.id()));
  }

  @Test
  void the_address_on_a_label_leads_through_the_sign_in_to_the_piece() {
    Piece labelled = workshop.begin(workshop.part("LBL-F07-S1"));
    Page page = browsing.phone().newPage();
    page.navigate("/p/LBL-F07-S1/1");
    page.getByLabel("Name").fill("volunteer");
    page.getByLabel("Password").fill("tidewing-volunteer");

    new Thumb(page).tap(AriaRole.BUTTON, "Sign in");

    assertThat(page.locator("main")).hasAttribute("data-piece", String.valueOf(labelled.id()));
  }

  @ParameterizedTest
  @CsvSource({"1920, 1080, LIGHT", "1280, 720, DARK"})
  void the_wall_board_fills_a_screen_in_letters_of_a_thirtieth_of_its_height(
      int width, int height, ColorScheme scheme) {
    Page wall = wallOf(1, browsing.screen(width, height, scheme));

    assertThat(scrollsBeyondTheScreen(wall)).isFalse();
    assertThat(wall.evaluate("document.querySelector('.wall').scrollHeight - innerHeight"))
        .isEqualTo(0);
    assertThat(smallestLetters(wall)).isGreaterThanOrEqualTo(height / 30.0);
    Accessibility.hasNoViolations(wall);
    Browsing.picture(wall, "wall-" + width);
  }

  @Test
  void the_wall_board_follows_the_work_and_says_when_it_does_not_any_more() {
    BrowserContext screen = browsing.screen(1280, 720, ColorScheme.LIGHT);
    Page wall = wallOf(workshop.buildId(), screen);
    Illustration.head(wallOf(1, screen), "wall-board");
    assertThat(wall.locator("main")).containsText("Nothing is begun.");

    LogStage log = application.getBean(LogStage.class);
    as(Role.FITTER, () -> log.start(piece.id(), "lay-out-and-cut", null, ""));
    assertThat(wall.locator("main")).containsText("lay out and cut, ", patient());
    assertThat(wall.getByText("Not updated since")).isHidden();

    screen.setOffline(true);
    assertThat(wall.getByText("Not updated since")).isVisible(visiblePatient());
    assertThat(scrollsBeyondTheScreen(wall)).isFalse();
    screen.setOffline(false);
    assertThat(wall.getByText("Not updated since")).isHidden(hiddenPatient());

    screen.clearCookies();
    assertThat(wall.getByText("Sign in again")).isVisible(visiblePatient());
    assertThat(wall.locator("main")).containsText("lay out and cut, ");
  }

  @Test
  void without_scripts_the_wall_board_has_a_link_to_look_again() {
    Page wall = phoneOf("guest", false);
    wall.navigate("/builds/1/wall");

    new Thumb(wall).tap(AriaRole.LINK, "Look again");

    assertThat(wall.locator("h1")).hasText("Where does Tidewing stand?");
  }

  private static Page wallOf(long build, BrowserContext screen) {
    Page wall = screen.pages().isEmpty() ? Browsing.signedIn(screen, "guest") : screen.newPage();
    wall.navigate("/builds/" + build + "/wall");
    return wall;
  }

  private static boolean scrollsBeyondTheScreen(Page wall) {
    return Boolean.TRUE.equals(
        wall.evaluate(
            "() => { const e = document.documentElement;"
                + " return e.scrollHeight > innerHeight || e.scrollWidth > innerWidth; }"));
  }

  /** Of everything that the board says; the links below it are for whoever stands before it. */
  private static double smallestLetters(Page wall) {
    Object smallest =
        wall.evaluate(
            "() => Math.min(...[...document.querySelectorAll('.wall-board :is(h1, h2, p, small)')]"
                + ".map(e => parseFloat(getComputedStyle(e).fontSize)))");
    return ((Number) smallest).doubleValue();
  }

  private APIResponse finish(Page page, String stage) {
    String token = page.locator("input[name=_csrf]").first().getAttribute("value");
    return page.request()
        .post(
            page() + "/stages/" + stage + "/finish",
            RequestOptions.create()
                .setHeader("Accept", "text/html")
                .setForm(FormData.create().set("_csrf", token)));
  }

  private List<String> logged() {
    return database.queryForList(
        "select who || ' ' || action || ' ' || stage_code from stage_entry"
            + " where piece_id = ? order by ordinal",
        String.class,
        piece.id());
  }

  private String bench() {
    return "/builds/" + workshop.buildId() + "/bench";
  }

  private String page() {
    return "/pieces/" + piece.id();
  }

  private static Locator justLogged(Page page) {
    return page.locator(".just-logged");
  }

  private static Locator button(Page page, String words) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words).setExact(true));
  }

  /** The board is asked for anew every five seconds. */
  private static LocatorAssertions.ContainsTextOptions patient() {
    return new LocatorAssertions.ContainsTextOptions().setTimeout(30_000);
  }

  private static LocatorAssertions.IsVisibleOptions visiblePatient() {
    return new LocatorAssertions.IsVisibleOptions().setTimeout(30_000);
  }

  private static LocatorAssertions.IsHiddenOptions hiddenPatient() {
    return new LocatorAssertions.IsHiddenOptions().setTimeout(30_000);
  }
}
