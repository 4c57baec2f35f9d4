package dev.flangewright.offline;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.resource.ResourceUrlProvider;

/** The service worker, and the page it shows in place of one that it does not keep. */
@Controller
class OfflineController {

  private static final MediaType SCRIPT =
      new MediaType("text", "javascript", StandardCharsets.UTF_8);

  /** Of a library: its address carries the version. */
  private static final String HTMX = "/webjars/htmx.org/dist/htmx.min.js";

  private final KeptFiles files;
  private final ResourceUrlProvider addresses;
  private final String script;

  OfflineController(KeptFiles files, ResourceUrlProvider addresses) throws IOException {
    this.files = files;
    this.addresses = addresses;
    this.script =
        new ClassPathResource("offline/service-worker.js")
            .getContentAsString(StandardCharsets.UTF_8);
  }

  /** At the root, so that it may serve every page; asked for anew at every visit. */
  @GetMapping("/service-worker.js")
  ResponseEntity<String> worker() {
    return ResponseEntity.ok()
        .contentType(SCRIPT)
        .cacheControl(CacheControl.noCache())
        .body(
            "const VERSION = \"%s\";%nconst FILES = [%s];%n".formatted(files.version(), quoted())
                + script);
  }

  private String quoted() {
    String htmx = String.valueOf(addresses.getForLookupPath(HTMX)).substring(1);
    return Stream.concat(files.addresses().stream(), Stream.of(htmx, "offline"))
        .map("\"%s\""::formatted)
        .collect(Collectors.joining(", "));
  }

  @GetMapping("/offline")
  String page() {
    return "offline/page";
  }
}
