package dev.flangewright;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Tells the layout which of its links leads to where the reader already is. */
@ControllerAdvice(annotations = Controller.class)
class CurrentPlace {

  private static final String OVERVIEW = "overview";

  /** Words of an address, and the link that stands for pages under that word. */
  private static final Map<String, String> PLACES =
      Map.ofEntries(
          Map.entry("builds", "builds"),
          Map.entry("frames", "parts"),
          Map.entry("parts", "parts"),
          Map.entry("metals", "parts"),
          Map.entry("shop-values", "parts"),
          Map.entry("bench", "bench"),
          Map.entry("pieces", "bench"),
          Map.entry("find", "bench"),
          Map.entry("p", "bench"),
          Map.entry("wall", OVERVIEW),
          Map.entry("blocks", "blocks"),
          Map.entry("block-sets", "blocks"),
          Map.entry("stock", "stock"),
          Map.entry("batches", "stock"),
          Map.entry("inspections", "quality"),
          Map.entry("quality", "quality"),
          Map.entry("route", "routes"),
          Map.entry("routes", "routes"),
          Map.entry("journal", "journal"),
          Map.entry("import", "import"),
          Map.entry("people", "people"),
          Map.entry("help", "help"));

  @ModelAttribute("place")
  String place(HttpServletRequest request) {
    return of(request.getRequestURI().substring(request.getContextPath().length()));
  }

  /**
   * The place an address belongs to: the last word of it that has a link, so that the pieces of a
   * part are found under Bench. The root is the overview; an address with no such word has no link
   * and yields an empty string.
   */
  static String of(String path) {
    if (path.equals("/")) {
      return OVERVIEW;
    }
    return Arrays.stream(path.split("/"))
        .filter(PLACES::containsKey)
        .map(PLACES::get)
        .reduce("", (a, b) -> b);
  }
}
