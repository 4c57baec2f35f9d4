package dev.flangewright.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.Map;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.security.config.annotation.method.configuration.EnableMethodSecurity;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.HttpStatusEntryPoint;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.authentication.www.BasicAuthenticationFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.AnyRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestHeaderRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.springframework.session.security.web.authentication.SpringSessionRememberMeServices;

/** Who gets in, and what a browser may do with our pages. Rules of roles stand on the services. */
@Configuration
@EnableMethodSecurity
class SignInRules {

  /** Nothing from elsewhere, nothing inline: a name with HTML in it cannot become script. */
  static final String CONTENT_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:;"
          + " font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self';"
          + " form-action 'self'; base-uri 'none'; object-src 'none'; frame-ancestors 'none'";

  static final String BROWSER_FEATURES =
      "camera=(self), geolocation=(), microphone=(), payment=(), usb=()";

  /** A script asks for a part of a page; a form to sign in would be put in its place. */
  private static final RequestMatcher PART_OF_A_PAGE =
      new RequestHeaderRequestMatcher("HX-Request");

  /** The HTTP API: no session and no cookie, so no forged form can ride on one. */
  @Bean
  @Order(1)
  SecurityFilterChain apiRules(HttpSecurity http, ApiDoor door, TokenSignIn tokens) {
    return http.securityMatcher("/api/**")
        .authorizeHttpRequests(all -> all.anyRequest().authenticated())
        .httpBasic(basic -> basic.authenticationEntryPoint(door))
        .exceptionHandling(
            refusals -> refusals.authenticationEntryPoint(door).accessDeniedHandler(door))
        .csrf(csrf -> csrf.disable())
        .addFilterBefore(new CrossSiteRefusal(), BasicAuthenticationFilter.class)
        .addFilterBefore(new TokenDoor(tokens, door), BasicAuthenticationFilter.class)
        .sessionManagement(s -> s.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
        .headers(SignInRules::strict)
        .build();
  }

  @Bean
  @Order(2)
  SecurityFilterChain pageRules(
      HttpSecurity http, SpringSessionRememberMeServices rememberThisPhone) {
    return http.authorizeHttpRequests(
            all ->
                all.requestMatchers(
                        "/sign-in",
                        "/first-run",
                        "/invitation/*",
                        "/error",
                        "/css/**",
                        "/js/**",
                        "/webjars/**",
                        "/icon.svg",
                        "/icons/**",
                        "/manifest.webmanifest",
                        "/service-worker.js",
                        "/offline",
                        "/help",
                        "/actuator/health")
                    .permitAll()
                    .requestMatchers("/actuator/**")
                    .denyAll()
                    .anyRequest()
                    .authenticated())
        .exceptionHandling(
            refusals ->
                refusals
                    .defaultAuthenticationEntryPointFor(
                        new HttpStatusEntryPoint(HttpStatus.UNAUTHORIZED),
                        new OrRequestMatcher(
                            PathPatternRequestMatcher.pathPattern("/bench/token"), PART_OF_A_PAGE))
                    .defaultAuthenticationEntryPointFor(
                        new LoginUrlAuthenticationEntryPoint("/sign-in"),
                        AnyRequestMatcher.INSTANCE))
        .formLogin(
            form ->
                form.loginPage("/sign-in")
                    .successHandler(new SignedInFrom())
                    .failureHandler(SignInRules::leadBack))
        .rememberMe(phone -> phone.rememberMeServices(rememberThisPhone))
        .logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in?signedOut"))
        .headers(SignInRules::strict)
        .build();
  }

  /** Longer than a holiday; the list of devices ends it sooner. */
  @Bean
  SpringSessionRememberMeServices rememberThisPhone() {
    SpringSessionRememberMeServices services = new SpringSessionRememberMeServices();
    services.setRememberMeParameterName("remember");
    services.setValiditySeconds((int) Duration.ofDays(30).toSeconds());
    return services;
  }

  /** The same answer for a name that nobody has and for a wrong password. */
  private static void leadBack(
      HttpServletRequest request, HttpServletResponse response, AuthenticationException refused)
      throws IOException {
    String what = refused instanceof TooManyAttempts many ? "wait=" + many.seconds() : "error";
    response.sendRedirect(request.getContextPath() + "/sign-in?" + what);
  }

  private static void strict(HeadersConfigurer<HttpSecurity> headers) {
    headers
        .contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
        .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
        .permissionsPolicyHeader(features -> features.policy(BROWSER_FEATURES));
  }

  /** Argon2id with 19 MiB, two passes, one lane (OWASP Password Storage Cheat Sheet, 2026). */
  @Bean
  PasswordEncoder passwordEncoder() {
    return new DelegatingPasswordEncoder(
        "argon2id", Map.of("argon2id", new Argon2PasswordEncoder(16, 32, 1, 19_456, 2)));
  }
}
