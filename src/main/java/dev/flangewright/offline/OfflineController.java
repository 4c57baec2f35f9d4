package dev.flangewright.offline;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** The service worker, and the page it shows in place of one that it does not keep. */
@Controller
class OfflineController {

  private static final MediaType SCRIPT =
      new MediaType("text", "javascript", StandardCharsets.UTF_8);

  private final String script;

  OfflineController(KeptFiles files) throws IOException {
    String addresses =
        files.addresses().stream().map("\"%s\""::formatted).collect(Collectors.joining(", "));
    this.script =
        "const VERSION = \"%s\";%nconst FILES = [%s];%n".formatted(files.version(), addresses)
            + new ClassPathResource("offline/service-worker.js")
                .getContentAsString(StandardCharsets.UTF_8);
  }

  /** At the root, so that it may serve every page; asked for anew at every visit. */
  @GetMapping("/service-worker.js")
  ResponseEntity<String> worker() {
    return ResponseEntity.ok()
        .contentType(SCRIPT)
        .cacheControl(CacheControl.noCache())
        .body(script);
  }

  @GetMapping("/offline")
  String page() {
    return "offline/page";
  }
}
