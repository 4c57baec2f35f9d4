package dev.flangewright.quality;

import dev.flangewright.parts.PartSheetPanel;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Shows on the part sheet what inspections found on its pieces. */
@Component
@Order(20)
class InspectionsOfPart implements PartSheetPanel {

  private final Inspections inspections;
  private final ListInspections list;

  InspectionsOfPart(Inspections inspections, ListInspections list) {
    this.inspections = inspections;
    this.list = list;
  }

  @Override
  public String template() {
    return "quality/_inspections :: ofPart";
  }

  @Override
  @Transactional(readOnly = true)
  public Map<String, Object> model(long partId) {
    return Map.of(
        "qualityInspections", list.lines(inspections.findByPiecePartIdOrderByIdDesc(partId)));
  }
}
