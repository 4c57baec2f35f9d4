package dev.flangewright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.util.List;

/** What a machine can check of WCAG 2.2, levels A and AA. */
final class Accessibility {

  private static final List<String> RULES =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

  private Accessibility() {}

  static void hasNoViolations(Page page) {
    var found = new AxeBuilder(page).withTags(RULES).analyze().getViolations();
    assertThat(found.stream().map(rule -> rule.getId() + ": " + rule.getNodes()).toList())
        .as("violations of WCAG 2.2 A and AA on " + page.url())
        .isEmpty();
  }
}
