package dev.flangewright.parts.web;

import dev.flangewright.forming.FormingException;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.parts.GaugeEntry;
import dev.flangewright.parts.GaugeKind;
import dev.flangewright.parts.GaugeReading;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.ReadGauge;
import dev.flangewright.parts.drawing.GaugedStretch;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;

/**
 * A gauge reading and what it leaves to do. The reading stands in the page's address and nothing is
 * stored.
 */
@Controller
class GaugeController {

  private final Parts parts;
  private final ReadGauge gauge;

  GaugeController(Parts parts, ReadGauge gauge) {
    this.parts = parts;
    this.gauge = gauge;
  }

  @GetMapping("/parts/{id}/gauge")
  String page(
      @PathVariable long id,
      @ModelAttribute GaugeEntry asked,
      Model model,
      HttpServletResponse response) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    GaugeEntry form = asked.on(part);
    BindingResult said = new BeanPropertyBindingResult(form, "form");
    model.addAttribute("part", part);
    model.addAttribute("build", part.build());
    model.addAttribute("form", form);
    model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", said);
    model.addAttribute("gauges", List.of(GaugeKind.values()));
    model.addAttribute("gauge", GaugeKind.named(form.gauge()));
    if (!asked.reading().isEmpty()) {
      answer(part, form, said, model, response);
    }
    return "parts/gauge";
  }

  private void answer(
      Part part, GaugeEntry form, BindingResult said, Model model, HttpServletResponse response) {
    try {
      GaugeReading reading = gauge.of(part, form);
      model.addAttribute("answer", reading);
      model.addAttribute("drawing", GaugedStretch.of("gauged", reading));
    } catch (FormingException refusal) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      said.reject("refused", String.valueOf(refusal.getMessage()));
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
    }
  }
}
