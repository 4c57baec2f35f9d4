package dev.flangewright.quality.web;

import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import dev.flangewright.quality.Inspection;
import dev.flangewright.quality.Inspections;
import dev.flangewright.quality.ScrapStatistics;
import java.time.Clock;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Slice;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;

/** Reads what the quality page shows. */
@Component
class QualityPages {

  private static final int ON_A_PAGE = 25;

  private final Builds builds;
  private final ScrapStatistics statistics;
  private final Inspections inspections;
  private final Clock clock;

  QualityPages(Builds builds, ScrapStatistics statistics, Inspections inspections, Clock clock) {
    this.builds = builds;
    this.statistics = statistics;
    this.inspections = inspections;
    this.clock = clock;
  }

  /**
   * @param page of the inspections, from 1, newest first
   */
  @Transactional(readOnly = true)
  void fill(Model model, long buildId, int page) {
    model.addAttribute(
        "build", builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId)));
    model.addAttribute(
        "quality", QualityPage.of(statistics.byCause(buildId), statistics.byOutcome(buildId)));
    int from = Math.max(1, page) - 1;
    Slice<Inspection> slice =
        inspections.findByBuildIdOrderByDoneAtDescIdDesc(buildId, PageRequest.of(from, ON_A_PAGE));
    model.addAttribute(
        "inspections",
        slice.map(inspection -> InspectionRow.of(inspection, clock.instant())).toList());
    model.addAttribute("newer", from > 0 ? from : 0);
    model.addAttribute("older", slice.hasNext() ? from + 2 : 0);
  }
}
