package dev.flangewright.offline;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.Principal;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Tells the service worker whose page it is, so that it never shows one to somebody else. */
@Component
class AccountHeader implements HandlerInterceptor, WebMvcConfigurer {

  static final String NAME = "Flangewright-Account";

  @Override
  public void addInterceptors(InterceptorRegistry registry) {
    registry.addInterceptor(this).excludePathPatterns("/api/**");
  }

  @Override
  public boolean preHandle(
      HttpServletRequest request, HttpServletResponse response, Object handler) {
    Principal account = request.getUserPrincipal();
    if (account != null) {
      response.setHeader(NAME, URLEncoder.encode(account.getName(), StandardCharsets.UTF_8));
    }
    return true;
  }
}
