package dev.flangewright.parts.web;

import dev.flangewright.forming.RiskLevel;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.PartState;
import dev.flangewright.parts.Register;
import dev.flangewright.parts.RegisterFilter;
import dev.flangewright.parts.RegisterLine;
import dev.flangewright.parts.RegisterOrder;
import dev.flangewright.people.Refused;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The register of a build. */
@Controller
class RegisterController {

  private final Builds builds;
  private final Register register;

  RegisterController(Builds builds, Register register) {
    this.builds = builds;
    this.register = register;
  }

  @GetMapping("/builds/{id}/parts")
  String parts(
      @PathVariable long id,
      @ModelAttribute("filter") RegisterFilter filter,
      @RequestParam(defaultValue = "FRAME") RegisterOrder order,
      @RequestParam(defaultValue = "1") int page,
      Model model) {
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    List<RegisterLine> lines = register.of(id);
    List<RegisterLine> sought = Register.sought(lines, filter, order);
    model.addAttribute("page", RegisterPage.of(sought, lines.size(), page));
    model.addAttribute("order", order);
    model.addAttribute("orders", RegisterOrder.values());
    model.addAttribute("states", PartState.values());
    model.addAttribute("risks", RiskLevel.values());
    model.addAttribute("frames", Register.frames(lines));
    return "parts/register";
  }
}
