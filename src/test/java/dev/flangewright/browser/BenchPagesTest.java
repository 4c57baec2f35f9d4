package dev.flangewright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.LogStage;
import dev.flangewright.bench.Piece;
import dev.flangewright.people.Role;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page that people at the vice use, looked at on a phone: access, sizes, width. */
class BenchPagesTest extends InTheWorkshop {

  private Map<String, String> addresses;
  private Page light;
  private Page dark;
  private Page volunteer;

  /** A new page of the bench is added here, and is then looked at by every test below. */
  @BeforeAll
  void openTheWorkshop() {
    AWorkshop workshop = AWorkshop.in(application);
    workshop.part("TW-F07-S9");
    Piece next = workshop.begin(workshop.part("TW-F07-S1"));
    Piece begun = workshop.begin(workshop.part("TW-F07-S2"));
    start(begun, "lay-out-and-cut");
    Piece held = workshop.begin(workshop.part("TW-F07-S3"));
    workshop.bringTo(held, "edges");
    start(held, "edges");
    Piece ready = workshop.begin(workshop.part("TW-F07-S4"));
    workshop.bringTo(ready, "inspect");
    String build = "/builds/" + workshop.buildId();
    addresses =
        Map.ofEntries(
            Map.entry("list", build + "/bench"),
            Map.entry("list of the demo", "/builds/1/bench"),
            Map.entry("piece to start", "/pieces/" + next.id()),
            Map.entry("piece to finish", "/pieces/" + begun.id()),
            Map.entry("piece held", "/pieces/" + held.id()),
            Map.entry("piece to inspect", "/pieces/" + ready.id()),
            Map.entry("gauge", "/pieces/" + begun.id() + "/gauge"),
            Map.entry("find, several", build + "/find?q=F07"),
            Map.entry("find, none", build + "/find?q=nothing-like-it"),
            Map.entry("routes", "/builds/1/routes"),
            Map.entry("route", "/routes/" + first("route")),
            Map.entry("blocks", "/builds/1/blocks"),
            Map.entry("block set", "/block-sets/" + first("block_set")),
            Map.entry("wall", build + "/wall"));
    light = lead(ColorScheme.LIGHT);
    dark = lead(ColorScheme.DARK);
    volunteer = phoneOf("volunteer");
  }

  /** The lead may do everything, so is offered the most. */
  private Page lead(ColorScheme scheme) {
    return Browsing.signedIn(browsing.phone(scheme, ReducedMotion.REDUCE), "lead");
  }

  Collection<String> pages() {
    return addresses.keySet();
  }

  /** Those worked on with dirty hands; the others are read, or edited at a desk. */
  Stream<String> pagesAtTheVice() {
    return pages().stream().filter(name -> name.matches("(list|piece|gauge|find).*")).sorted();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void is_open_to_everybody_in_light_and_dark_and_no_wider_than_the_phone(String name) {
    for (Page page : List.of(light, dark)) {
      open(page, name);

      Accessibility.hasNoViolations(page);
      assertThat(page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
          .isEqualTo(true);
    }
  }

  @ParameterizedTest
  @MethodSource("pagesAtTheVice")
  void can_be_hit_with_a_thumb_in_a_glove(String name) {
    for (Page page : List.of(light, volunteer)) {
      open(page, name);

      assertThat(Targets.faults(page)).isEmpty();
    }
  }

  private void open(Page page, String name) {
    page.navigate(addresses.get(name));
    assertThat(page.locator("h1").count()).isEqualTo(1);
    page.locator("details").all().forEach(one -> one.evaluate("e => e.open = true"));
  }

  private void start(Piece piece, String code) {
    LogStage log = application.getBean(LogStage.class);
    AWorkshop.as(Role.FITTER, () -> log.start(piece.id(), code, null, ""));
  }

  private long first(String table) {
    return database.queryForList("select min(id) from " + table, Long.class).get(0);
  }
}
