package dev.flangewright.people;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;

/** Notes with a new session what it was begun on, then leads where the person wanted to go. */
class SignedInFrom extends SavedRequestAwareAuthenticationSuccessHandler {

  /** The session's attribute. */
  static final String SYSTEM = "flangewright.system";

  /** A session that lasts longer untouched than this belongs to a device that is remembered. */
  static final Duration LONGEST_VISIT = Duration.ofDays(1);

  private static final Map<String, String> SYSTEMS = new LinkedHashMap<>();

  static {
    SYSTEMS.put("Android", "Android");
    SYSTEMS.put("iPhone", "iPhone");
    SYSTEMS.put("iPad", "iPad");
    SYSTEMS.put("Windows", "Windows");
    SYSTEMS.put("Macintosh", "macOS");
    SYSTEMS.put("CrOS", "ChromeOS");
    SYSTEMS.put("Linux", "Linux");
  }

  @Override
  public void onAuthenticationSuccess(
      HttpServletRequest request, HttpServletResponse response, Authentication signedIn)
      throws ServletException, IOException {
    request.getSession().setAttribute(SYSTEM, system(request.getHeader(HttpHeaders.USER_AGENT)));
    super.onAuthenticationSuccess(request, response, signedIn);
  }

  static String system(@Nullable String userAgent) {
    return SYSTEMS.entrySet().stream()
        .filter(one -> userAgent != null && userAgent.contains(one.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("not known");
  }
}
