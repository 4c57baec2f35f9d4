package dev.flangewright.browser;

import com.microsoft.playwright.Page;
import java.util.List;

/**
 * Measures what can be tapped on a page of the bench. A primary button is at least 64 px high and
 * as wide as its column; between a button and the next target are at least 12 px; every other
 * target is at least 44 px high and wide. Excepted, as by WCAG 2.2, 2.5.8 "Inline": a link within a
 * sentence, whose size follows the line. A radio button or checkbox counts with the words that
 * switch it.
 */
final class Targets {

  private static final String MEASURE =
      """
      () => {
        const main = document.querySelector("main.bench");
        const column = main.clientWidth;
        const seen = (e) => e.checkVisibility({ visibilityProperty: true });
        const target = (e) => e.matches("input[type=radio], input[type=checkbox]") ? e.closest("label") : e;
        const inSentence = (e) => e.matches("a") && getComputedStyle(e).display === "inline"
            && e.parentElement.textContent.trim() !== e.textContent.trim();
        const all = [...new Set([...main.querySelectorAll(
            "a[href], button, input:not([type=hidden]), select, textarea, summary")].map(target))]
            .filter((e) => seen(e) && !inSentence(e));
        const isButton = (e) => e.matches("button, .button");
        const name = (e) => `${e.tagName.toLowerCase()} "${(e.textContent.trim() || e.name).slice(0, 40)}"`;
        const box = (e) => e.getBoundingClientRect();
        const gap = (a, b) => Math.max(a.left - b.right, b.left - a.right, a.top - b.bottom, b.top - a.bottom);
        const faults = [];
        for (const e of all) {
          const { width, height } = box(e);
          if (e.matches(".primary") && (height < 64 || width < column - 0.5)) {
            faults.push(`${name(e)} is ${width} x ${height}, column ${column}`);
          } else if (height < 44 || width < 44) {
            faults.push(`${name(e)} is ${width} x ${height}`);
          }
        }
        all.forEach((a, i) => all.slice(i + 1).forEach((b) => {
          if ((isButton(a) || isButton(b)) && gap(box(a), box(b)) < 11.9) {
            faults.push(`${name(a)} and ${name(b)} are ${gap(box(a), box(b))} apart`);
          }
        }));
        return all.length === 0 ? ["nothing to measure"] : faults;
      }
      """;

  private Targets() {}

  /** What is too small or too near, in words. */
  @SuppressWarnings("unchecked") // the script gives a list of strings
  static List<String> faults(Page page) {
    return (List<String>) page.evaluate(MEASURE);
  }
}
