package dev.flangewright.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.SampleRegister;
import dev.flangewright.people.Refused;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.testing.DatabaseTest;
import dev.flangewright.testing.StatementCount;
import jakarta.persistence.EntityManagerFactory;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.security.access.AccessDeniedException;

/** What the bench asks of the blocks. */
@DatabaseTest
class BlockReadinessTest {

  @Autowired ApplicationContext application;
  @Autowired EntityManagerFactory entities;
  @Autowired BlockReadiness readiness;
  @Autowired KeepBlockSets sets;
  @Autowired KeepBlocks keep;
  @Autowired HandleBlock handle;
  @Autowired Blocks blocks;
  @Autowired Parts parts;

  private long build;
  private Part part;

  @BeforeEach
  void aPartOnBlockSetBs1() {
    SampleRegister register = new SampleRegister(application);
    build = register.build("Hull " + UUID.randomUUID());
    part = parts.findById(register.part(build, "P-1")).orElseThrow();
  }

  @Test
  void a_part_waits_for_its_block_until_it_is_made() {
    assertThat(readiness.notReady(part, BlockKind.FORM_BLOCK, 1)).isEmpty();
    long block = record("FORM_BLOCK", "TO_MAKE");
    assertThat(readiness.notReady(part, BlockKind.FORM_BLOCK, 1))
        .hasValue("The form block, stage 1 of BS-1 is still to make.");
    SignedIn.as(
        "fitter", Role.FITTER, () -> handle.by(block, BlockAction.MAKE_READY, null, "").id());
    assertThat(readiness.notReady(part, BlockKind.FORM_BLOCK, 1)).isEmpty();
  }

  @Test
  void damage_reported_at_the_bench_is_that_of_the_block_in_use() {
    long shelf = record("FORM_BLOCK", "READY");
    long bench = keep("FORM_BLOCK", "READY");
    SignedIn.as("vic", Role.VOLUNTEER, () -> handle.by(bench, BlockAction.TAKE, null, "").id());

    SignedIn.as(
        "vic",
        Role.VOLUNTEER,
        () -> readiness.reportDamage(part, BlockKind.FORM_BLOCK, 1, "corner chipped"));

    assertThat(condition(bench)).isEqualTo(BlockCondition.NEEDS_REPAIR);
    assertThat(condition(shelf)).isEqualTo(BlockCondition.READY);
    assertThat(readiness.notReady(part, BlockKind.FORM_BLOCK, 1)).isEmpty();
  }

  @Test
  void damage_to_a_block_that_nobody_recorded_is_refused_with_the_name_of_the_set() {
    assertThatThrownBy(
            () ->
                SignedIn.as(
                    "vic",
                    Role.VOLUNTEER,
                    () -> readiness.reportDamage(part, BlockKind.BACKING_BLOCK, 0, "cracked")))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("BS-1 has no backing block");
  }

  @Test
  void a_guest_reports_nothing() {
    record("FORM_BLOCK", "READY");
    assertThatThrownBy(
            () ->
                SignedIn.as(
                    "guest",
                    Role.GUEST,
                    () -> readiness.reportDamage(part, BlockKind.FORM_BLOCK, 1, "chipped")))
        .isInstanceOf(AccessDeniedException.class);
  }

  @Test
  void the_blocks_of_a_whole_build_take_one_statement() throws Throwable {
    record("FORM_BLOCK", "READY");
    for (int i = 0; i < 20; i++) {
      long[] set = new long[1];
      String code = "More " + i;
      SignedIn.as(
          "fitter", Role.FITTER, () -> set[0] = sets.record(build, BlockSetEntry.named(code)).id());
      add(set[0], "FORM_BLOCK", "TO_MAKE");
    }
    assertThat(StatementCount.of(entities, () -> readiness.ofBuild(build))).isEqualTo(1);
    BlocksOfBuild all = readiness.ofBuild(build);
    assertThat(all.notReady("BS-1", BlockKind.FORM_BLOCK, 1)).isEmpty();
    assertThat(all.notReady("More 19", BlockKind.FORM_BLOCK, 1)).isPresent();
    assertThat(all.notReady("", BlockKind.FORM_BLOCK, 1)).isEmpty();
  }

  private long record(String kind, String condition) {
    SignedIn.as("fitter", Role.FITTER, () -> sets.record(build, BlockSetEntry.named("BS-1")).id());
    return keep(kind, condition);
  }

  private long keep(String kind, String condition) {
    long set =
        application.getBean(BlockSets.class).findByBuildIdAndCode(build, "BS-1").orElseThrow().id();
    return add(set, kind, condition);
  }

  private long add(long set, String kind, String condition) {
    long[] id = new long[1];
    SignedIn.as(
        "fitter",
        Role.FITTER,
        () -> id[0] = keep.add(set, new BlockEntry(kind, "1", "beech", "", condition)).id());
    return id[0];
  }

  private BlockCondition condition(long block) {
    return blocks.findById(block).orElseThrow().condition();
  }
}
