package dev.flangewright.quality.web;

import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import dev.flangewright.quality.Inspection;
import dev.flangewright.quality.InspectionLine;
import dev.flangewright.quality.Inspections;
import dev.flangewright.quality.ListInspections;
import dev.flangewright.quality.ScrapStatistics;
import java.util.List;
import java.util.stream.IntStream;
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
  private final ListInspections list;

  QualityPages(
      Builds builds, ScrapStatistics statistics, Inspections inspections, ListInspections list) {
    this.builds = builds;
    this.statistics = statistics;
    this.inspections = inspections;
    this.list = list;
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
    model.addAttribute("inspections", rows(slice.getContent()));
    model.addAttribute("newer", from > 0 ? from : 0);
    model.addAttribute("older", slice.hasNext() ? from + 2 : 0);
  }

  private List<InspectionRow> rows(List<Inspection> found) {
    List<InspectionLine> lines = list.lines(found);
    return IntStream.range(0, lines.size())
        .mapToObj(i -> new InspectionRow(found.get(i).piece().part().partNumber(), lines.get(i)))
        .toList();
  }
}
