package dev.flangewright.parts.web;

import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.ShopValue;
import dev.flangewright.materials.KeepShopValues;
import dev.flangewright.materials.ShopValueEntry;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;

/** The shop values of a build. A refused change shows them as they stand, with the reason. */
@Controller
@RequestMapping("/builds/{id}/shop-values")
class ShopValuesController {

  private static final String PAGE = "parts/shop-values";

  private final Builds builds;
  private final KeepShopValues shop;

  ShopValuesController(Builds builds, KeepShopValues shop) {
    this.builds = builds;
    this.shop = shop;
  }

  @GetMapping
  String show(@PathVariable long id, ModelMap model) {
    fill(id, model);
    model.addAttribute("form", ShopValueForm.EMPTY);
    return PAGE;
  }

  @PostMapping("/{which}")
  ModelAndView use(
      @PathVariable long id,
      @PathVariable ShopValue which,
      @ModelAttribute("form") ShopValueForm form,
      ModelMap model) {
    return changed(id, which, model, () -> shop.use(id, which, form.own(which), form.seen()));
  }

  @PostMapping("/{which}/default")
  ModelAndView goBack(
      @PathVariable long id,
      @PathVariable ShopValue which,
      @ModelAttribute("form") ShopValueForm form,
      ModelMap model) {
    return changed(id, which, model, () -> shop.goBack(id, which, form.reason(), form.seen()));
  }

  private ModelAndView changed(long id, ShopValue which, ModelMap model, Runnable change) {
    fill(id, model);
    try {
      change.run();
      return new ModelAndView("redirect:/builds/" + id + "/shop-values");
    } catch (FormingException refusal) {
      return refused(which, refusal, model, HttpStatus.UNPROCESSABLE_CONTENT);
    } catch (Refused refusal) {
      boolean conflict = refusal.kind() == Refused.Kind.CONFLICT;
      return refused(
          which, refusal, model, conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
    }
  }

  private static ModelAndView refused(
      ShopValue which, Exception refusal, ModelMap model, HttpStatus status) {
    model.addAttribute("typedFor", which);
    model.addAttribute("refused", which.label() + ": " + refusal.getMessage());
    return new ModelAndView(PAGE, model, status);
  }

  private void fill(long id, ModelMap model) {
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    List<ShopValueEntry> entries = shop.entries(id);
    Map<ShopValue, Integer> latest =
        entries.stream()
            .collect(Collectors.toMap(ShopValueEntry::name, ShopValueEntry::ordinal, Math::max));
    model.addAttribute("values", ShopValueRow.of(shop.of(id)));
    model.addAttribute("entries", entries);
    model.addAttribute("latest", latest);
  }
}
