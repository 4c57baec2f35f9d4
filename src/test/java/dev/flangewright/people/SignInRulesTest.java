package dev.flangewright.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.httpBasic;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.authenticated;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.unauthenticated;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.testing.DatabaseTest;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

@DatabaseTest
class SignInRulesTest {

  private static final String NAME = "somebody who signs in";
  private static final String PASSWORD = "a long enough one";

  @Autowired MockMvc mvc;
  @Autowired KeepAccounts keep;
  @Autowired Accounts accounts;

  /** The database may already hold accounts of another test, so this one has a name of its own. */
  @BeforeEach
  void someone() {
    if (accounts.findByUsername(NAME).isEmpty()) {
      SignedIn.as("test", Role.LEAD, () -> keep.add(NAME, Role.LEAD, PASSWORD));
    }
  }

  @Test
  void a_password_is_kept_as_argon2id_with_19_mib() {
    String hash = accounts.findByUsername(NAME).orElseThrow().passwordHash();
    assertThat(hash).startsWith("{argon2id}$argon2id$v=19$m=19456,t=2,p=1$");
  }

  @Test
  void the_right_password_lets_in_and_a_wrong_one_does_not() throws Exception {
    mvc.perform(formLogin("/sign-in").user(NAME).password(PASSWORD)).andExpect(authenticated());
    mvc.perform(formLogin("/sign-in").user(NAME).password("not the right one"))
        .andExpect(unauthenticated());
    mvc.perform(formLogin("/sign-in").user("nobody").password(PASSWORD))
        .andExpect(unauthenticated());
  }

  @Test
  void a_page_may_run_nothing_inline_and_load_nothing_from_elsewhere() throws Exception {
    mvc.perform(get("/sign-in"))
        .andExpect(status().isOk())
        .andExpect(header().string("Content-Security-Policy", SignInRules.CONTENT_POLICY))
        .andExpect(header().string("X-Content-Type-Options", "nosniff"))
        .andExpect(header().string("Referrer-Policy", "same-origin"))
        .andExpect(header().exists("Permissions-Policy"));
    assertThat(SignInRules.CONTENT_POLICY).doesNotContain("unsafe");
  }

  @Test
  void a_form_without_its_token_is_refused() throws Exception {
    mvc.perform(post("/sign-in").param("username", NAME).param("password", PASSWORD))
        .andExpect(status().isForbidden());
  }

  @Test
  void only_health_is_public_of_the_operating_endpoints() throws Exception {
    mvc.perform(get("/actuator/health")).andExpect(status().isOk());
    mvc.perform(get("/actuator/env")).andExpect(status().is3xxRedirection());
  }

  @Test
  void a_page_that_wants_to_send_is_told_that_the_sign_in_has_ended_and_not_led_elsewhere()
      throws Exception {
    mvc.perform(get("/bench/token")).andExpect(status().isUnauthorized());
  }

  @Test
  void the_api_wants_an_account_and_refuses_a_change_asked_for_by_another_site() throws Exception {
    mvc.perform(get("/api/v1/builds")).andExpect(status().isUnauthorized());
    mvc.perform(post("/api/v1/builds").header("Sec-Fetch-Site", "cross-site"))
        .andExpect(status().isForbidden());
  }

  /** Name and address are its own, so that the delay meets no other test. */
  @Test
  void whoever_guesses_has_to_wait_in_the_form_and_in_the_api_known_name_or_not() throws Exception {
    String guessed = "somebody whose password is guessed";
    if (accounts.findByUsername(guessed).isEmpty()) {
      SignedIn.as("test", Role.LEAD, () -> keep.add(guessed, Role.LEAD, PASSWORD));
    }
    for (String name : List.of(guessed, "nobody of that name")) {
      String from = name.equals(guessed) ? "192.0.2.7" : "192.0.2.8";
      for (int i = 0; i < 5; i++) {
        mvc.perform(signIn(name, from)).andExpect(redirectedUrl("/sign-in?error"));
      }
      mvc.perform(signIn(name, from)).andExpect(redirectedUrl("/sign-in?wait=1"));
      mvc.perform(get("/api/v1/builds").with(httpBasic(name, "wrong one")).with(from(from)))
          .andExpect(status().isTooManyRequests())
          .andExpect(header().string("Retry-After", "1"));
    }
    mvc.perform(get("/sign-in?wait=1"))
        .andExpect(content().string(containsString("Try again in 1 s")));
  }

  private static MockHttpServletRequestBuilder signIn(String name, String address) {
    return post("/sign-in")
        .param("username", name)
        .param("password", "not the right one")
        .with(csrf())
        .with(from(address));
  }

  private static RequestPostProcessor from(String address) {
    return request -> {
      request.setRemoteAddr(address);
      return request;
    };
  }
}
