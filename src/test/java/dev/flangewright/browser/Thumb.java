package dev.flangewright.browser;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;

/** A thumb on the glass of a phone; counts how often it comes down. */
final class Thumb {

  private final Page page;
  private int taps;

  Thumb(Page page) {
    this.page = page;
  }

  /** Taps the first button or link that says these words. */
  void tap(AriaRole role, String words) {
    tap(page.getByRole(role, new Page.GetByRoleOptions().setName(words).setExact(true)).first());
  }

  void tap(Locator target) {
    taps++;
    target.tap();
    page.waitForLoadState();
  }

  int taps() {
    return taps;
  }
}
