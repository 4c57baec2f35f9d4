package dev.flangewright.records;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.LogStage;
import dev.flangewright.bench.Piece;
import dev.flangewright.people.Clearance;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** What is taken down of work that goes through the ordinary services. */
@DatabaseTest
class CaptureTest {

  @Autowired ApplicationContext context;
  @Autowired LogStage log;
  @Autowired KeepAccounts accounts;
  @Autowired CheckJournal check;
  @Autowired Checkpoints checkpoints;
  @Autowired JdbcClient jdbc;
  @Autowired EntityManager entities;
  @Autowired TransactionTemplate transaction;

  private AWorkshop shop;
  private String chain;

  @BeforeEach
  void aBuild() {
    shop = AWorkshop.in(context);
    chain = Chains.ofBuild(shop.buildId());
  }

  @Test
  void starting_a_stage_is_taken_down_with_who_did_it_to_which_part() {
    Piece piece = shop.begin(shop.part("TW-1"));
    long before = checkpoints.of(chain).count();
    String stage = piece.stages().get(0).code();
    AWorkshop.as(Role.FITTER, () -> log.start(piece.id(), stage, null, "block 2"));
    List<String> lines = lines(before);
    assertThat(lines)
        .allSatisfy(line -> assertThat(line).contains("\"part\":\"TW-1\"", "\"who\":\"fitter\""));
    assertThat(lines)
        .anySatisfy(
            line ->
                assertThat(line)
                    .contains(
                        "\"done\":\"changed\"",
                        "\"kind\":\"piece stage\"",
                        "\"label\":\"TW-1, piece 1, " + stage + "\"",
                        "{\"field\":\"startedBy\",\"from\":null,\"to\":\"fitter\"}"))
        .anySatisfy(
            line ->
                assertThat(line)
                    .contains(
                        "\"done\":\"made\"",
                        "\"kind\":\"stage entry\"",
                        "{\"field\":\"note\",\"from\":null,\"to\":\"block 2\"}"));
    assertThat(lines).noneMatch(line -> line.contains("standing"));
    assertThat(check.of(chain, null).isSound()).isTrue();
  }

  @Test
  void a_change_that_is_refused_leaves_no_entry() {
    Piece piece = shop.begin(shop.part("TW-1"));
    Checkpoint before = checkpoints.of(chain);
    transaction.executeWithoutResult(
        status -> {
          String stage = piece.stages().get(0).code();
          AWorkshop.as(Role.FITTER, () -> log.start(piece.id(), stage, null, ""));
          entities.flush();
          status.setRollbackOnly();
        });
    assertThat(checkpoints.of(chain).head()).isEqualTo(before.head());
  }

  @Test
  void what_was_written_before_the_session_was_cleared_is_taken_down_too() {
    Piece piece = shop.begin(shop.part("TW-1"));
    String stage = piece.stages().get(0).code();
    long before = checkpoints.of(chain).count();
    transaction.executeWithoutResult(
        status -> {
          AWorkshop.as(Role.FITTER, () -> log.start(piece.id(), stage, null, ""));
          entities.flush();
          entities.clear();
        });
    assertThat(lines(before)).hasSizeGreaterThan(1);
    assertThat(check.of(chain, null).isSound()).isTrue();
  }

  @Test
  void an_account_is_taken_down_with_its_clearances_and_without_the_hash_of_its_password() {
    String name = "u" + UUID.randomUUID();
    long before = checkpoints.of(Chains.INSTALLATION).count();
    AWorkshop.as(
        Role.LEAD,
        () -> {
          accounts.add(name, Role.VOLUNTEER, "four plain words here");
          return null;
        });
    long id = id(name);
    AWorkshop.as(
        Role.LEAD,
        () -> {
          accounts.clear(id, Set.of(Clearance.CUT, Clearance.HEAT_TREAT));
          accounts.setPassword(id, "four other words here");
          return null;
        });
    List<String> lines =
        lines(Chains.INSTALLATION, before).stream().filter(line -> line.contains(name)).toList();
    assertThat(lines)
        .anySatisfy(
            line ->
                assertThat(line)
                    .contains(
                        "{\"field\":\"clearances\",\"from\":\"CUT, FORM_SHRINK, FORM_STRETCH\","
                            + "\"to\":\"CUT, HEAT_TREAT\"}"))
        .anySatisfy(
            line ->
                assertThat(line)
                    .contains(
                        "{\"field\":\"passwordHash\",\"from\":\"(secret)\",\"to\":\"(secret)\"}",
                        "\"who\":\"lead\""));
    assertThat(lines).noneMatch(line -> line.contains("argon2"));
    assertThat(check.of(Chains.INSTALLATION, null).isSound()).isTrue();
  }

  @Test
  void a_build_belongs_to_the_installation_and_its_parts_to_its_own_chain() {
    shop.part("TW-2");
    assertThat(lines(0))
        .anyMatch(line -> line.contains("\"kind\":\"frame\""))
        .anyMatch(line -> line.contains("\"kind\":\"part\""))
        .anyMatch(line -> line.contains("\"label\":\"TW-2, outer\""));
    assertThat(lines(Chains.INSTALLATION, 0)).anyMatch(line -> line.contains("\"kind\":\"build\""));
  }

  private long id(String username) {
    return jdbc.sql("select id from account where username = ?")
        .param(username)
        .query(Long.class)
        .single();
  }

  private List<String> lines(long after) {
    return lines(chain, after);
  }

  private List<String> lines(String of, long after) {
    return jdbc.sql("select line from journal_entry where chain = ? and seq > ? order by seq")
        .param(of)
        .param(after)
        .query(String.class)
        .list();
  }
}
