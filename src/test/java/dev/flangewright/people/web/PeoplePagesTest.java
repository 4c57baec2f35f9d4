package dev.flangewright.people.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.people.Clearance;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.people.WhoIsCleared;
import dev.flangewright.testing.DatabaseTest;
import jakarta.servlet.http.Cookie;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

@DatabaseTest(properties = "spring.application.name=flangewright-people-tests")
class PeoplePagesTest {

  private static final String PASSWORD = "a long enough one";

  /** The session cookie's name where no real server sets its own. */
  private static final String SESSION = "SESSION";

  private static final AtomicLong NUMBER = new AtomicLong();

  @Autowired MockMvc mvc;
  @Autowired KeepAccounts accounts;
  @Autowired WhoIsCleared who;

  private String fitter;

  @BeforeEach
  void aLeadAndAFitter() {
    if (accounts.nobodyYet()) {
      accounts.first("lead", PASSWORD);
    }
    fitter = "fitter " + NUMBER.incrementAndGet();
    SignedIn.as("lead", Role.LEAD, () -> accounts.add(fitter, Role.FITTER, PASSWORD));
  }

  @Test
  void a_lead_sees_everybody_and_others_see_only_how_to_change_their_password() throws Exception {
    mvc.perform(get("/people").with(account("lead", Role.LEAD)))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString(fitter)))
        .andExpect(content().string(containsString("Add this account")));
    mvc.perform(get("/people").with(account("somebody", Role.MANAGER)))
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString(fitter))))
        .andExpect(content().string(containsString("Change my password")));
  }

  @Test
  void only_a_lead_adds_an_account() throws Exception {
    send(add("helper", PASSWORD), "somebody", Role.MANAGER).andExpect(status().isForbidden());
    send(add("helper", PASSWORD), "lead", Role.LEAD).andExpect(redirectedUrl("/people"));
    send(add("helper", PASSWORD), "lead", Role.LEAD)
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("already an account named helper")));
    send(add("short", "too short"), "lead", Role.LEAD)
        .andExpect(status().is(422))
        .andExpect(content().string(containsString("it needs 12 to 200")))
        .andExpect(content().string(containsString("value=\"short\"")));
  }

  @Test
  void html_in_a_name_is_refused() throws Exception {
    send(add("<b>bold</b>", PASSWORD), "lead", Role.LEAD).andExpect(status().is(422));
  }

  @Test
  void the_only_lead_stays_one() throws Exception {
    long lead = id("lead");
    send(post("/people/{id}/role", lead).param("role", "GUEST"), "lead", Role.LEAD)
        .andExpect(status().isConflict());
    send(post("/people/{id}/enabled", lead).param("enabled", "false"), "lead", Role.LEAD)
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("This is the only lead")));
  }

  @Test
  void whoever_lost_their_access_is_signed_out_at_once() throws Exception {
    Cookie session = signIn(PASSWORD);
    staysIn(session);
    send(post("/people/{id}/enabled", id(fitter)).param("enabled", "false"), "lead", Role.LEAD)
        .andExpect(redirectedUrl("/people"));
    isOut(session);
    mvc.perform(login(PASSWORD)).andExpect(redirectedUrl("/sign-in?error"));
  }

  @Test
  void a_changed_role_is_not_carried_on_by_an_old_session() throws Exception {
    Cookie session = signIn(PASSWORD);
    send(post("/people/{id}/role", id(fitter)).param("role", "GUEST"), "lead", Role.LEAD)
        .andExpect(redirectedUrl("/people"));
    isOut(session);
  }

  @Test
  void the_lead_clears_people_for_work_and_a_new_role_brings_its_own_clearances() throws Exception {
    assertThat(cleared()).contains(Clearance.CUT, Clearance.HEAT_TREAT);
    Cookie session = signIn(PASSWORD);

    send(post("/people/{id}/clearances", id(fitter)).param("clearance", "CUT"), "lead", Role.LEAD)
        .andExpect(redirectedUrl("/people"));

    assertThat(cleared()).containsExactly(Clearance.CUT);
    isOut(session);
    assertThat(who.namesFor(Clearance.CUT)).contains(fitter);
    assertThat(who.namesFor(Clearance.HEAT_TREAT)).doesNotContain(fitter);
    send(post("/people/{id}/clearances", id(fitter)), "lead", Role.LEAD);
    assertThat(cleared()).isEmpty();
    send(post("/people/{id}/role", id(fitter)).param("role", "INSPECTOR"), "lead", Role.LEAD);
    assertThat(cleared()).containsExactly(Clearance.INSPECT);
    send(post("/people/{id}/clearances", id(fitter)), "somebody", Role.MANAGER)
        .andExpect(status().isForbidden());
  }

  private Set<Clearance> cleared() {
    AtomicReference<Set<Clearance>> found = new AtomicReference<>(Set.of());
    SignedIn.as(
        "lead",
        Role.LEAD,
        () ->
            accounts.all().stream()
                .filter(account -> account.username().equals(fitter))
                .forEach(account -> found.set(account.clearances())));
    return found.get();
  }

  @Test
  void a_password_set_by_the_lead_ends_the_sessions_of_the_old_one() throws Exception {
    Cookie session = signIn(PASSWORD);
    send(
            post("/people/{id}/password", id(fitter)).param("password", "another long one"),
            "lead",
            Role.LEAD)
        .andExpect(redirectedUrl("/people"));
    isOut(session);
    staysIn(signIn("another long one"));
  }

  @Test
  void my_own_password_needs_the_old_one() throws Exception {
    Cookie session = signIn(PASSWORD);
    mvc.perform(own("not the old one", "another long one").cookie(session))
        .andExpect(status().is(422))
        .andExpect(content().string(containsString("The old password is not right")));
    staysIn(session);
    mvc.perform(own(PASSWORD, "another long one").cookie(session))
        .andExpect(redirectedUrl("/sign-in?changed"));
    isOut(session);
    staysIn(signIn("another long one"));
  }

  private Cookie signIn(String password) throws Exception {
    Cookie cookie = mvc.perform(login(password)).andReturn().getResponse().getCookie(SESSION);
    return java.util.Objects.requireNonNull(cookie, "not signed in");
  }

  private MockHttpServletRequestBuilder login(String password) {
    return post("/sign-in").with(csrf()).param("username", fitter).param("password", password);
  }

  private static MockHttpServletRequestBuilder own(String old, String password) {
    return post("/people/own-password").with(csrf()).param("old", old).param("password", password);
  }

  private static MockHttpServletRequestBuilder add(String name, String password) {
    return post("/people").param("name", name).param("role", "GUEST").param("password", password);
  }

  private void staysIn(Cookie session) throws Exception {
    mvc.perform(get("/people").cookie(session)).andExpect(status().isOk());
  }

  private void isOut(Cookie session) throws Exception {
    mvc.perform(get("/people").cookie(session)).andExpect(redirectedUrl("/sign-in"));
  }

  private ResultActions send(MockHttpServletRequestBuilder request, String name, Role role)
      throws Exception {
    return mvc.perform(request.with(csrf()).with(account(name, role)));
  }

  private long id(String name) {
    AtomicReference<Long> id = new AtomicReference<>();
    SignedIn.as(
        "lead",
        Role.LEAD,
        () ->
            accounts.all().stream()
                .filter(account -> account.username().equals(name))
                .forEach(account -> id.set(account.id())));
    return id.get();
  }

  private static RequestPostProcessor account(String name, Role role) {
    String[] permissions = role.permissions().stream().map(Enum::name).toArray(String[]::new);
    return user(name).authorities(AuthorityUtils.createAuthorityList(permissions));
  }
}
