package dev.flangewright.quality.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Why pieces of a build were scrapped. */
@Controller
class QualityController {

  private final QualityPages pages;

  QualityController(QualityPages pages) {
    this.pages = pages;
  }

  @GetMapping("/builds/{id}/quality")
  String show(@PathVariable long id, @RequestParam(defaultValue = "1") int page, Model model) {
    pages.fill(model, id, page);
    return "quality/quality";
  }
}
