package dev.flangewright.quality;

import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Counts why pieces of a build were scrapped, and how inspections ended; one statement each. */
@Service
@Transactional(readOnly = true)
public class ScrapStatistics {

  private final Inspections inspections;

  ScrapStatistics(Inspections inspections) {
    this.inspections = inspections;
  }

  /** Causes with at least one scrapped piece, the commonest first. */
  public List<ScrapTally> byCause(long buildId) {
    return inspections.tallyScrap(buildId, Outcome.SCRAP);
  }

  /** Outcomes that came up at least once. */
  public List<OutcomeCount> byOutcome(long buildId) {
    return inspections.countOutcomes(buildId);
  }
}
