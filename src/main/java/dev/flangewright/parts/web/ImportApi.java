package dev.flangewright.parts.web;

import dev.flangewright.parts.exchange.ImportPlan;
import dev.flangewright.parts.exchange.ImportRefused;
import dev.flangewright.parts.exchange.ImportRegister;
import dev.flangewright.parts.exchange.Progress;
import dev.flangewright.parts.exchange.RegisterFiles;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RequestPart;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/** The register's two files over HTTP. */
@RestController
@RequestMapping("/api/v1/builds/{id}/import")
@Tag(name = "Builds")
class ImportApi {

  private final ImportRegister register;

  ImportApi(ImportRegister register) {
    this.register = register;
  }

  @PostMapping(consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
  @Operation(
      summary = "Import a register and its contours",
      description =
          "All or nothing. Files with problems are refused (422), with file, line, column, value"
              + " and reason of each in the member \"problems\"; so is their preview. Needs a lead"
              + " or a manager.")
  ImportAnswer take(
      @PathVariable long id,
      @Parameter(description = "register.csv; may be left out.")
          @RequestPart(name = "register", required = false)
          @Nullable MultipartFile registerFile,
      @Parameter(description = "contours.csv; may be left out.")
          @RequestPart(name = "contours", required = false)
          @Nullable MultipartFile contoursFile,
      @Parameter(description = "True: tell what would change, and store nothing.")
          @RequestParam(defaultValue = "false")
          boolean dryRun) {
    RegisterFiles files = new RegisterFiles(resource(registerFile), resource(contoursFile));
    if (!dryRun) {
      return ImportAnswer.stored(register.apply(id, files, Progress.UNSEEN).stored());
    }
    ImportPlan plan = register.preview(id, files, Progress.UNSEEN);
    if (plan.isRefused()) {
      throw new ImportRefused(plan);
    }
    return ImportAnswer.preview(plan);
  }

  private static @Nullable Resource resource(@Nullable MultipartFile file) {
    return file == null ? null : file.getResource();
  }
}
