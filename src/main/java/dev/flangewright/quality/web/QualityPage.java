package dev.flangewright.quality.web;

import dev.flangewright.bench.Hours;
import dev.flangewright.drawing.ParetoChart;
import dev.flangewright.quality.Outcome;
import dev.flangewright.quality.OutcomeCount;
import dev.flangewright.quality.ScrapTally;
import java.util.Arrays;
import java.util.List;

/** Why pieces of a build were scrapped, and how inspections ended. */
record QualityPage(String lede, String chart, List<CauseLine> causes, List<RateLine> rates) {

  /** A cause with what it has cost. */
  record CauseLine(String name, long pieces, String hours) {}

  /** An outcome, how often, and its share of all inspections. */
  record RateLine(String word, long inspections, String share) {}

  static QualityPage of(List<ScrapTally> tallies, List<OutcomeCount> outcomes) {
    return new QualityPage(
        lede(tallies),
        ParetoChart.of(
            "scrap-by-cause",
            "Scrapped pieces by cause",
            "pieces",
            tallies.stream()
                .map(tally -> new ParetoChart.Cause(shortName(tally), (int) tally.pieces()))
                .toList()),
        tallies.stream()
            .map(t -> new CauseLine(t.causeName(), t.pieces(), Hours.inWords(t.hours())))
            .toList(),
        rates(outcomes));
  }

  /** What follows the colon tells causes with one sign apart: "Crack at an edge: not deburred". */
  private static String shortName(ScrapTally tally) {
    String name = tally.causeName();
    String tail = name.substring(name.indexOf(": ") < 0 ? 0 : name.indexOf(": ") + 2);
    return Character.toUpperCase(tail.charAt(0)) + tail.substring(1);
  }

  private static String lede(List<ScrapTally> tallies) {
    if (tallies.isEmpty()) {
      return "None was.";
    }
    long pieces = tallies.stream().mapToLong(ScrapTally::pieces).sum();
    double hours = tallies.stream().mapToDouble(ScrapTally::hours).sum();
    return "%s, with %s of work in %s. Most often: %s."
        .formatted(
            pieces == 1 ? "1 piece was scrapped" : pieces + " pieces were scrapped",
            Hours.inWords(hours),
            pieces == 1 ? "it" : "them",
            tallies.get(0).causeName());
  }

  private static List<RateLine> rates(List<OutcomeCount> outcomes) {
    long all = outcomes.stream().mapToLong(OutcomeCount::inspections).sum();
    return Arrays.stream(Outcome.values()).map(o -> rate(o, count(o, outcomes), all)).toList();
  }

  private static RateLine rate(Outcome outcome, long count, long all) {
    String share = all == 0 ? "–" : Math.round(100.0 * count / all) + " %";
    return new RateLine(words(outcome), count, share);
  }

  private static long count(Outcome outcome, List<OutcomeCount> outcomes) {
    return outcomes.stream()
        .filter(counted -> counted.outcome() == outcome)
        .mapToLong(OutcomeCount::inspections)
        .sum();
  }

  private static String words(Outcome outcome) {
    return switch (outcome) {
      case ACCEPT -> "accepted";
      case REWORK -> "sent back for rework";
      case CONCESSION -> "accepted with a concession";
      case SCRAP -> "scrapped";
    };
  }
}
