package dev.flangewright.api;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;

import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.http.MediaType;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Speaks to the API as one of the workshop's people, each with a role. */
@Import(Workshop.class)
@DatabaseTest(properties = "spring.application.name=flangewright-api-tests")
abstract class ApiTest {

  static final String PASSWORD = "a bench password";

  @Autowired MockMvc mvc;
  @Autowired KeepAccounts accounts;
  @Autowired Workshop workshop;
  @Autowired JsonMapper json;

  /** One account with a password, for what is about signing in. */
  @BeforeEach
  void lead() {
    if (accounts.nobodyYet()) {
      accounts.first("lead", PASSWORD);
    }
  }

  ResultActions read(String who, String address) throws Exception {
    return mvc.perform(get("/api/v1" + address).with(account(who)));
  }

  ResultActions send(String who, String address, String body) throws Exception {
    return mvc.perform(
        post("/api/v1" + address)
            .with(account(who))
            .contentType(MediaType.APPLICATION_JSON)
            .content(body));
  }

  /** The fitter's entry with a key of its own. */
  ResultActions sendWithKey(String key, String address, String body) throws Exception {
    return mvc.perform(
        post("/api/v1" + address)
            .with(account("fitter"))
            .header("Idempotency-Key", key)
            .contentType(MediaType.APPLICATION_JSON)
            .content(body));
  }

  ResultActions replace(String who, String address, String body) throws Exception {
    return mvc.perform(
        put("/api/v1" + address)
            .with(account(who))
            .contentType(MediaType.APPLICATION_JSON)
            .content(body));
  }

  /** Somebody signed in whose name is the word of the role, with all that the role usually has. */
  static RequestPostProcessor account(String who) {
    Role role = Role.valueOf(who.toUpperCase(Locale.ROOT));
    return user(who).authorities(AuthorityUtils.createAuthorityList(role.authorities()));
  }

  JsonNode body(ResultActions answer) throws Exception {
    return json.readTree(answer.andReturn().getResponse().getContentAsString());
  }

  /** Begins a piece of a fresh part; its id. */
  long newPiece() throws Exception {
    long part = workshop.partOnACircle(0.1, 0, 500.1, 20.1);
    return body(send("fitter", "/parts/" + part + "/pieces", "")).get("id").asLong();
  }

  void passStage(long piece, String code) throws Exception {
    String stage = "/pieces/" + piece + "/stages/" + code;
    send("fitter", stage + "/start", "");
    if (code.equals("edges")) {
      send("inspector", stage + "/check", "");
    }
    send("fitter", stage + "/finish", "");
  }
}
