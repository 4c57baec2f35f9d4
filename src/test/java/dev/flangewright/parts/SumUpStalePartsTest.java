package dev.flangewright.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.forming.FormingModel;
import dev.flangewright.testing.DatabaseTest;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

@DatabaseTest
class SumUpStalePartsTest {

  @Autowired SumUpStaleParts stale;
  @Autowired Parts parts;
  @Autowired JdbcClient jdbc;

  private SampleRegister sample;

  @BeforeEach
  void register(@Autowired ApplicationContext application) {
    sample = new SampleRegister(application);
  }

  @Test
  void figures_of_an_older_model_are_summed_up_again() {
    long buildId = sample.build("Stale " + UUID.randomUUID());
    long id = sample.part(buildId, "P-1");
    Double mass = parts.whole(id).orElseThrow().summary().blankMassKg();
    jdbc.sql("update part set figures_version = 0, blank_mass_kg = 99 where id = ?")
        .param(id)
        .update();

    stale.all();

    PartSummary summary = parts.whole(id).orElseThrow().summary();
    assertThat(summary.figuresVersion()).isEqualTo(FormingModel.VERSION);
    assertThat(summary.blankMassKg()).isNotNull().isEqualTo(mass);
  }

  @Test
  void figures_of_this_model_are_left_alone() {
    long buildId = sample.build("Fresh " + UUID.randomUUID());
    long id = sample.part(buildId, "P-1");
    long version = parts.whole(id).orElseThrow().version();

    stale.all();

    assertThat(parts.whole(id).orElseThrow().version()).isEqualTo(version);
  }
}
