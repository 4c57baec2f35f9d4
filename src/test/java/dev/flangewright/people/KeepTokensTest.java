package dev.flangewright.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.testing.DatabaseTest;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@DatabaseTest
class KeepTokensTest {

  private static final String PASSWORD = "tailor candle wagon";

  @Autowired MockMvc mvc;
  @Autowired KeepTokens tokens;
  @Autowired KeepAccounts accounts;
  @Autowired Accounts all;
  @Autowired JdbcClient database;
  @Autowired ShopClock clock;

  private final String lead = "lead " + UUID.randomUUID();

  @BeforeEach
  void aLead() {
    SignedIn.as("test", Role.LEAD, () -> accounts.add(lead, Role.LEAD, PASSWORD));
  }

  @Test
  void a_reading_token_reads_and_changes_nothing() throws Exception {
    String token = token(false);
    mvc.perform(with(token, get("/api/v1/builds"))).andExpect(status().isOk());
    mvc.perform(with(token, build())).andExpect(status().isUnauthorized());
    mvc.perform(with(token(true), build())).andExpect(status().isCreated());
  }

  @Test
  void nothing_that_could_be_used_is_stored() {
    String token = token(true);
    assertThat(token).startsWith("fw_").hasSizeGreaterThan(40);
    assertThat(database.sql("select digest from access_token").query(String.class).list())
        .allMatch(digest -> digest.matches("[0-9a-f]{64}"))
        .contains(new Secret(token).digest())
        .doesNotContain(token);
  }

  @Test
  void an_expired_an_ended_and_a_made_up_token_let_nobody_in() throws Exception {
    AtomicReference<String> old = new AtomicReference<>("");
    clock.at(Instant.now().minus(8, ChronoUnit.DAYS), () -> old.set(token(false)));
    mvc.perform(with(old.get(), get("/api/v1/builds"))).andExpect(status().isUnauthorized());
    String ended = token(false);
    SignedIn.as(lead, Role.LEAD, () -> tokens.mine().forEach(one -> tokens.end(one.id())));
    mvc.perform(with(ended, get("/api/v1/builds"))).andExpect(status().isUnauthorized());
    mvc.perform(with("fw_made-up", get("/api/v1/builds"))).andExpect(status().isUnauthorized());
  }

  @Test
  void a_closed_accounts_tokens_let_nobody_in_and_a_lesser_role_may_less() throws Exception {
    String token = token(true);
    long id = all.findByUsername(lead).orElseThrow().id();
    SignedIn.as(
        "test",
        Role.LEAD,
        () -> accounts.add("other " + lead.substring(5, 13), Role.LEAD, PASSWORD));
    SignedIn.as("test", Role.LEAD, () -> accounts.changeRole(id, Role.GUEST));
    mvc.perform(with(token, build())).andExpect(status().isForbidden());
    SignedIn.as("test", Role.LEAD, () -> accounts.enable(id, false));
    mvc.perform(with(token, get("/api/v1/builds"))).andExpect(status().isUnauthorized());
  }

  @Test
  void nobody_ends_or_sees_the_token_of_somebody_else() {
    token(false);
    AtomicReference<Long> id = new AtomicReference<>(0L);
    SignedIn.as(lead, Role.LEAD, () -> id.set(tokens.mine().get(0).id()));
    SignedIn.as(
        "another",
        Role.LEAD,
        () -> {
          assertThat(tokens.mine()).isEmpty();
          assertThatThrownBy(() -> tokens.end(id.get())).isInstanceOf(AccessDeniedException.class);
        });
  }

  @Test
  void the_page_shows_a_new_token_once_and_lists_it_from_then_on() throws Exception {
    var self = user(lead).authorities(AuthorityUtils.createAuthorityList(Role.LEAD.authorities()));
    mvc.perform(
            post("/people/tokens")
                .param("name", "stock list")
                .param("days", "30")
                .with(csrf())
                .with(self))
        .andExpect(content().string(containsString("value=\"fw_")));
    mvc.perform(get("/people/tokens").with(self))
        .andExpect(content().string(containsString("stock list")))
        .andExpect(content().string(not(containsString("fw_"))));
    mvc.perform(
            post("/people/tokens").param("name", "").param("days", "30").with(csrf()).with(self))
        .andExpect(status().is(422))
        .andExpect(content().string(containsString("what the token is for")));
  }

  private String token(boolean mayChange) {
    AtomicReference<String> made = new AtomicReference<>("");
    SignedIn.as(lead, Role.LEAD, () -> made.set(tokens.make(new TokenPlan("test", mayChange, 7))));
    return made.get();
  }

  private static MockHttpServletRequestBuilder build() {
    return post("/api/v1/builds")
        .contentType(MediaType.APPLICATION_JSON)
        .content("{\"name\": \"%s\"}".formatted(UUID.randomUUID()));
  }

  private static MockHttpServletRequestBuilder with(
      String token, MockHttpServletRequestBuilder request) {
    return request.header("Authorization", "Bearer " + token);
  }
}
