package dev.flangewright.overview.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.authenticated;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.parts.Builds;
import dev.flangewright.people.FirstRun;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.testing.DatabaseTest;
import java.lang.reflect.Field;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** A new installation, from its first request on. Each test has an empty database of its own. */
@DatabaseTest(properties = "spring.application.name=flangewright-first-run-tests")
@DirtiesContext(classMode = DirtiesContext.ClassMode.AFTER_EACH_TEST_METHOD)
class FirstRunTest {

  private static final String PASSWORD = "nine hulls in a row";

  @Autowired MockMvc mvc;
  @Autowired FirstRun firstRun;
  @Autowired KeepAccounts accounts;
  @Autowired Builds builds;

  @Test
  void a_stranger_without_the_token_makes_nothing_and_the_owner_does_it_once() throws Exception {
    mvc.perform(get("/")).andExpect(redirectedUrl("/first-run"));
    mvc.perform(get("/sign-in")).andExpect(redirectedUrl("/first-run"));
    mvc.perform(get("/first-run"))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("One-time token")));

    send("guessed", "lead", PASSWORD, "empty", "Hull")
        .andExpect(status().is(422))
        .andExpect(content().string(containsString("not the token in the start-up log")));
    send(token(), "lead", "short", "empty", "Hull")
        .andExpect(status().is(422))
        .andExpect(content().string(containsString("The password has 5 characters")));
    send(token(), "lead", PASSWORD, "empty", "  ")
        .andExpect(status().is(422))
        .andExpect(content().string(containsString("name needs 1 to 120 characters")));
    assertThat(accounts.nobodyYet()).as("a refused build takes the account back too").isTrue();

    send(token(), "lead", PASSWORD, "empty", "Hull").andExpect(redirectedUrl("/sign-in"));
    assertThat(builds.findByName("Hull")).isPresent();
    mvc.perform(formLogin("/sign-in").user("lead").password(PASSWORD)).andExpect(authenticated());

    mvc.perform(get("/first-run")).andExpect(redirectedUrl("/sign-in"));
    send(token(), "second", PASSWORD, "empty", "Another").andExpect(redirectedUrl("/sign-in"));
    assertThat(builds.findByName("Another")).isEmpty();
  }

  @Test
  void the_demo_build_can_be_chosen_instead_of_an_empty_one() throws Exception {
    send(token(), "owner", PASSWORD, "demo", "").andExpect(redirectedUrl("/sign-in"));

    assertThat(builds.findByName("Tidewing")).isPresent();
    mvc.perform(formLogin("/sign-in").user("owner").password(PASSWORD)).andExpect(authenticated());
  }

  private ResultActions send(
      String token, String name, String password, String start, String buildName) throws Exception {
    return mvc.perform(
        post("/first-run")
            .with(csrf())
            .param("token", token)
            .param("name", name)
            .param("password", password)
            .param("start", start)
            .param("buildName", buildName));
  }

  /** What the owner reads in the start-up log. */
  private String token() throws Exception {
    Field field = FirstRun.class.getDeclaredField("token");
    field.setAccessible(true);
    return (String) field.get(firstRun);
  }
}
