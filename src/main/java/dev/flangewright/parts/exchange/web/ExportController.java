package dev.flangewright.parts.exchange.web;

import dev.flangewright.parts.Builds;
import dev.flangewright.parts.exchange.ExportRegister;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

/** Hands the register out as the two files that an import reads. */
@Controller
@RequestMapping("/builds/{id}/export")
class ExportController {

  private final Builds builds;
  private final ExportRegister exports;

  ExportController(Builds builds, ExportRegister exports) {
    this.builds = builds;
    this.exports = exports;
  }

  @GetMapping("/register.csv")
  void register(@PathVariable long id, HttpServletResponse response) throws IOException {
    exports.register(id, attachment(id, "register.csv", response));
  }

  @GetMapping("/contours.csv")
  void contours(@PathVariable long id, HttpServletResponse response) throws IOException {
    exports.contours(id, attachment(id, "contours.csv", response));
  }

  /** Refuses an unknown build before the answer is marked as a file. */
  private OutputStream attachment(long id, String name, HttpServletResponse response)
      throws IOException {
    if (!builds.existsById(id)) {
      throw Refused.unknown("build", id);
    }
    response.setContentType("text/csv;charset=utf-8");
    response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"");
    return response.getOutputStream();
  }
}
