package dev.flangewright.parts;

import java.util.Map;

/**
 * A panel that another module puts on the part sheet, below the figures. Panels stand in the order
 * of {@link org.springframework.core.annotation.Order}.
 */
public interface PartSheetPanel {

  /** The fragment to insert, as Thymeleaf names it: {@code "bench/_pieces :: panel"}. */
  String template();

  /** What the fragment reads, under the names it reads it by: keep them apart by a prefix. */
  Map<String, Object> model(long partId);
}
