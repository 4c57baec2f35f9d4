package dev.flangewright.materials.web;

import dev.flangewright.materials.MaterialLibrary;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The shipped tables, whole or of one alloy. */
@Controller
class MaterialsController {

  private final MaterialLibrary library;

  MaterialsController(MaterialLibrary library) {
    this.library = library;
  }

  @GetMapping("/materials")
  String tables(@RequestParam(defaultValue = "") String alloy, Model model) {
    model.addAttribute("alloy", alloy.strip());
    model.addAttribute("alloys", library.alloys());
    model.addAttribute("materials", library.materials(alloy.strip()));
    model.addAttribute("radii", library.bendRadii(alloy.strip()));
    model.addAttribute("hardening", library.hardening(alloy.strip()));
    model.addAttribute("treatments", library.heatTreatments(alloy.strip()));
    library.formingWindow(alloy.strip()).ifPresent(window -> model.addAttribute("window", window));
    model.addAttribute("tolerances", library.sheetTolerances());
    model.addAttribute("gauges", library.gauges());
    return "materials/tables";
  }
}
