package dev.flangewright.people.web;

import dev.flangewright.people.Devices;
import jakarta.servlet.http.HttpSession;
import java.time.Clock;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** Where the reader is signed in. */
@Controller
@RequestMapping("/people/devices")
class DevicesController {

  private final Devices devices;
  private final Clock clock;

  DevicesController(Devices devices, Clock clock) {
    this.devices = devices;
    this.clock = clock;
  }

  @GetMapping
  String show(HttpSession session, Model model) {
    model.addAttribute(
        "devices",
        devices.mine(session.getId()).stream()
            .map(device -> DeviceLine.of(device, clock.instant()))
            .toList());
    return "people/devices";
  }

  @PostMapping("/{mark}/end")
  String end(@PathVariable String mark) {
    devices.end(mark);
    return "redirect:/people/devices";
  }
}
