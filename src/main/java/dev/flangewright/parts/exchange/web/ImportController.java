package dev.flangewright.parts.exchange.web;

import dev.flangewright.parts.Build;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.exchange.ImportJob;
import dev.flangewright.parts.exchange.ImportJobs;
import dev.flangewright.parts.exchange.RegisterFiles;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Upload, progress, preview and result of an import. */
@Controller
@RequestMapping("/builds/{id}/import")
class ImportController {

  private static final String GONE =
      "This import is not known any more: the program was restarted, the files were discarded, or"
          + " others were uploaded. Unless its page told you that the rows were stored, nothing was."
          + " Upload the files again; rows that the build has already show as unchanged.";

  private final Builds builds;
  private final ImportJobs jobs;

  ImportController(Builds builds, ImportJobs jobs) {
    this.builds = builds;
    this.jobs = jobs;
  }

  @ModelAttribute("build")
  Build build(@PathVariable long id) {
    return builds.findById(id).orElseThrow(() -> Refused.unknown("build", id));
  }

  @GetMapping
  String form(@PathVariable long id, Model model) {
    jobs.latest(id).ifPresent(job -> model.addAttribute("underWay", job));
    return "exchange/import";
  }

  @PostMapping
  String start(
      @PathVariable long id,
      @RequestParam(required = false) @Nullable MultipartFile register,
      @RequestParam(required = false) @Nullable MultipartFile contours,
      Model model,
      HttpServletResponse response) {
    try {
      ImportJob job = jobs.start(id, new RegisterFiles(chosen(register), chosen(contours)));
      return "redirect:/builds/" + id + "/import/" + job.id();
    } catch (Refused refused) {
      boolean clash = refused.kind() == Refused.Kind.CONFLICT;
      response.setStatus(
          clash ? HttpStatus.CONFLICT.value() : HttpStatus.UNPROCESSABLE_CONTENT.value());
      model.addAttribute("refusal", String.valueOf(refused.getMessage()));
      return form(id, model);
    }
  }

  @GetMapping("/{jobId}")
  String job(
      @PathVariable long id,
      @PathVariable String jobId,
      @RequestHeader(name = "HX-Request", required = false) @Nullable String partly,
      Model model,
      HttpServletResponse response) {
    ImportJob job = jobs.find(id, jobId).orElse(null);
    if (job == null) {
      response.setStatus(HttpStatus.NOT_FOUND.value());
      model.addAttribute("refusal", GONE);
      return form(id, model);
    }
    model.addAttribute("job", job.now());
    return partly == null ? "exchange/job" : "exchange/_job :: job";
  }

  @PostMapping("/{jobId}/accept")
  String accept(@PathVariable long id, @PathVariable String jobId) {
    jobs.find(id, jobId).ifPresent(jobs::accept);
    return "redirect:/builds/" + id + "/import/" + jobId;
  }

  @PostMapping("/{jobId}/discard")
  String discard(@PathVariable long id, @PathVariable String jobId, RedirectAttributes afterwards) {
    jobs.find(id, jobId).ifPresent(jobs::discard);
    afterwards.addFlashAttribute("notice", "The files were deleted. Nothing was stored.");
    return "redirect:/builds/" + id + "/import";
  }

  /** A browser sends a nameless, empty part for a field in which no file was chosen. */
  private static @Nullable Resource chosen(@Nullable MultipartFile file) {
    boolean named =
        file != null && file.getOriginalFilename() != null && !file.getOriginalFilename().isEmpty();
    return file == null || !named && file.isEmpty() ? null : file.getResource();
  }
}
