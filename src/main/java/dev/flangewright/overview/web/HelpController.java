package dev.flangewright.overview.web;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** Says what the words and marks mean. */
@Controller
class HelpController {

  @GetMapping("/help")
  String help() {
    return "help";
  }
}
