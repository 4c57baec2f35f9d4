package dev.flangewright.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

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

@DatabaseTest(properties = "spring.application.name=flangewright-block-statements")
class BlockListStatementsTest {

  @Autowired MockMvc mvc;
  @Autowired ApplicationContext application;
  @Autowired EntityManagerFactory entities;
  @Autowired KeepAccounts accounts;
  @Autowired KeepBlockSets sets;
  @Autowired KeepBlocks keep;

  @Test
  void the_list_of_120_sets_takes_no_more_statements_than_that_of_5() throws Throwable {
    if (accounts.nobodyYet()) {
      accounts.first("lead", "a long enough one");
    }
    long small = buildOf(5);
    statements(small); // the first request of all also asks whether there is an account
    long few = statements(small);
    long many = statements(buildOf(120));
    assertThat(few).isPositive();
    assertThat(many).isEqualTo(few);
  }

  /** A build with parts and so many recorded sets of two blocks each. */
  private long buildOf(int count) {
    SampleRegister register = new SampleRegister(application);
    long build = register.build("Blocks of " + count);
    register.parts(build, 10);
    SignedIn.as(
        "fitter",
        Role.FITTER,
        () -> {
          for (int i = 1; i <= count; i++) {
            long set = sets.record(build, BlockSetEntry.named("BS-" + i)).id();
            Block form = keep.add(set, new BlockEntry("FORM_BLOCK", "1", "beech", "", "READY"));
            Block backing = keep.add(set, new BlockEntry("BACKING_BLOCK", "", "", "", "TO_MAKE"));
            assertThat(form.id()).isNotEqualTo(backing.id());
          }
        });
    return build;
  }

  private long statements(long build) throws Throwable {
    return StatementCount.of(
        entities,
        () ->
            mvc.perform(get("/builds/{id}/blocks", build).with(user("guest")))
                .andExpect(status().isOk()));
  }
}
