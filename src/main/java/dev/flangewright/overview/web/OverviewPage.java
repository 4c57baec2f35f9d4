package dev.flangewright.overview.web;

import dev.flangewright.drawing.ParetoChart;
import dev.flangewright.overview.HullDrawing;
import dev.flangewright.overview.HullPart;
import dev.flangewright.overview.Overview;
import dev.flangewright.quality.ScrapTally;
import java.util.List;
import java.util.Locale;

/**
 * The overview as the page shows it; drawings are SVG, empty where there is nothing to draw.
 *
 * @param answer to how far the build is
 * @param scrapAnswer to why pieces were scrapped
 */
record OverviewPage(
    String answer,
    String hull,
    String stageBars,
    String frameBars,
    String scrapChart,
    String scrapAnswer,
    List<RiskLine> hardest) {

  static OverviewPage of(Overview overview, String linkPrefix) {
    return new OverviewPage(
        Sentences.howFar(overview.parts()),
        HullDrawing.of(
            "hull", linkPrefix, overview.hull().stream().map(HullPart::segment).toList()),
        Bars.ofStages(overview.stages()),
        Bars.ofFrames(overview.frames()),
        scrapChart(overview.scrap()),
        scrapAnswer(overview.scrap()),
        overview.hardest().stream().map(RiskLine::of).toList());
  }

  private static String scrapChart(List<ScrapTally> scrap) {
    return ParetoChart.of(
        "scrap-by-cause",
        "Scrapped pieces by cause",
        "pieces",
        scrap.stream()
            .map(tally -> new ParetoChart.Cause(brief(tally.causeName()), (int) tally.pieces()))
            .toList());
  }

  /** What tells a cause from its neighbour when there is little room: the words after its colon. */
  private static String brief(String cause) {
    String words = cause.substring(cause.indexOf(": ") + 1).strip();
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String scrapAnswer(List<ScrapTally> scrap) {
    if (scrap.isEmpty()) {
      return "None has been scrapped.";
    }
    long pieces = scrap.stream().mapToLong(ScrapTally::pieces).sum();
    String most = scrap.get(0).causeName();
    return "%s. Most often: %s."
        .formatted(pieces == 1 ? "1 piece was" : pieces + " pieces were", most);
  }
}
