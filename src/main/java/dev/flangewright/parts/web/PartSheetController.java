package dev.flangewright.parts.web;

import dev.flangewright.forming.FormingException;
import dev.flangewright.parts.FigurePart;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartSheetPanel;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Refused;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The sheet of a part: its drawing, its figures, and what other modules add to it. */
@Controller
class PartSheetController {

  private final Parts parts;
  private final FigurePart figure;
  private final ObjectProvider<PartSheetPanel> panels;

  PartSheetController(Parts parts, FigurePart figure, ObjectProvider<PartSheetPanel> panels) {
    this.parts = parts;
    this.figure = figure;
    this.panels = panels;
  }

  @GetMapping("/parts/{id}")
  String sheet(@PathVariable long id, Model model) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    model.addAttribute("part", part);
    model.addAttribute("build", part.build());
    model.addAttribute("sheetLabel", label(part));
    figures(part, model);
    model.addAttribute("panels", panels.orderedStream().map(PartSheetPanel::template).toList());
    panels.orderedStream().forEach(panel -> model.addAllAttributes(panel.model(id)));
    return "parts/sheet";
  }

  /** A part that cannot be figured still has its sheet, which says why. */
  private void figures(Part part, Model model) {
    try {
      model.addAttribute("view", PartSheetView.of(part, figure.of(part)));
    } catch (FormingException | Refused refusal) {
      model.addAttribute("problem", refusal.getMessage());
    }
  }

  private static String label(Part part) {
    return "%s, drawing %s issue %s"
        .formatted(part.partNumber(), part.drawn().drawing(), part.drawn().drawingIssue());
  }
}
