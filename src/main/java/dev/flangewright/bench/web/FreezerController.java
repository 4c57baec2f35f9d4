package dev.flangewright.bench.web;

import dev.flangewright.bench.LogFreezer;
import dev.flangewright.heat.QuenchTime;
import dev.flangewright.people.Refused;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/**
 * What is logged between the quench and the forming after it. The code of the heat treatment stands
 * in the address of what can wait on a phone, as with other entries.
 */
@Controller
@RequestMapping("/pieces/{id}")
class FreezerController {

  private final LogFreezer log;
  private final PiecePages pages;
  private final EntryDoor door;
  private final Clock clock;

  FreezerController(LogFreezer log, PiecePages pages, EntryDoor door, Clock clock) {
    this.log = log;
    this.pages = pages;
    this.door = door;
    this.clock = clock;
  }

  @PostMapping("/stages/{code}/freeze")
  ModelAndView into(
      @PathVariable long id,
      @RequestParam(defaultValue = "") String celsius,
      @RequestParam(defaultValue = "") String note,
      ModelMap model) {
    model.addAttribute("celsius", celsius);
    return entered(id, model, () -> log.into(id, Celsius.read(celsius), note));
  }

  @PostMapping("/stages/{code}/thaw")
  ModelAndView out(
      @PathVariable long id, @RequestParam(defaultValue = "") String note, ModelMap model) {
    return entered(id, model, () -> log.out(id, note));
  }

  @PostMapping("/late-forming")
  ModelAndView letBeFormedLate(
      @PathVariable long id, @RequestParam(defaultValue = "") String lateReason, ModelMap model) {
    model.addAttribute("lateReason", lateReason);
    return entered(id, model, () -> log.letBeFormedLate(id, lateReason));
  }

  @PostMapping("/quench")
  ModelAndView quenched(
      @PathVariable long id,
      @RequestParam(defaultValue = "") String quenchedAt,
      @RequestParam(defaultValue = "") String note,
      ModelMap model) {
    return entered(id, model, () -> log.quenched(id, time(quenchedAt), note));
  }

  private Instant time(String typed) {
    Instant read = QuenchTime.read(typed, clock.instant(), ZoneId.systemDefault());
    if (read == null) {
      throw Refused.unacceptable("quenchedAt is missing: say when it was quenched.");
    }
    return read;
  }

  private ModelAndView entered(long id, ModelMap model, Runnable entry) {
    try {
      door.through(id, entry);
      return new ModelAndView("redirect:/pieces/" + id);
    } catch (Refused refused) {
      door.throwIfSentLater(refused);
      RefusedPage.throwIfUnknown(refused);
      model.addAttribute("form", EntryForm.EMPTY);
      pages.fill(model, id, "");
      return RefusedPage.of("bench/piece", model, refused);
    }
  }
}
