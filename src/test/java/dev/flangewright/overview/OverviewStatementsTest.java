package dev.flangewright.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.BeginPiece;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.RegisterPart;
import dev.flangewright.parts.SampleRegister;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.testing.DatabaseTest;
import dev.flangewright.testing.StatementCount;
import jakarta.persistence.EntityManagerFactory;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;

@DatabaseTest(properties = "spring.application.name=flangewright-overview-statements")
class OverviewStatementsTest {

  @Autowired MockMvc mvc;
  @Autowired ApplicationContext application;
  @Autowired EntityManagerFactory entities;
  @Autowired KeepAccounts accounts;
  @Autowired BeginPiece begin;
  @Autowired Parts parts;

  @Test
  void the_overview_of_600_parts_takes_no_more_statements_than_that_of_60() throws Throwable {
    if (accounts.nobodyYet()) {
      accounts.first("lead", "a long enough one");
    }
    long small = buildOf(60);
    statements(small); // the first request of all also asks whether there is an account
    long few = statements(small);
    long many = statements(buildOf(600));
    assertThat(few).isPositive();
    assertThat(many).isEqualTo(few);
  }

  /** A third of the parts have a piece in work. */
  private long buildOf(int count) {
    SampleRegister register = new SampleRegister(application);
    long build = register.build("Build of " + count);
    register.parts(build, count);
    SignedIn.as(
        "fitter",
        Role.FITTER,
        () ->
            parts.register(build).stream()
                .map(RegisterPart::id)
                .limit(count / 3)
                .forEach(begin::of));
    return build;
  }

  private long statements(long build) throws Throwable {
    return StatementCount.of(
        entities,
        () ->
            mvc.perform(get("/builds/{id}", build).with(user("guest"))).andExpect(status().isOk()));
  }
}
