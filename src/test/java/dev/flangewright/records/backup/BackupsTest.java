package dev.flangewright.records.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.records.archive.Restore;
import dev.flangewright.testing.TestDatabase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** When backups are made, which are kept, and what comes before an upgrade. */
@Tag("database")
class BackupsTest {

  private static final Instant NIGHT = Instant.parse("2026-06-02T02:30:00Z");
  private static final String NOW = "timestamp with time zone '2026-06-02 12:00:00+00:00'";

  @TempDir Path disk;

  private final DataSource source = TestDatabase.fresh();

  private BackupSettings settings(String upgrade) {
    return new BackupSettings(disk.resolve("backups"), "02:30", 2, 1, upgrade);
  }

  private BackupBeforeUpgrade beforeUpgrade(String upgrade) {
    BackupSettings settings = settings(upgrade);
    return new BackupBeforeUpgrade(new BackUp(new BackupFolder(settings)), settings);
  }

  private Flyway flyway() {
    return Flyway.configure().dataSource(source).load();
  }

  private void firstRelease() {
    Flyway.configure().dataSource(source).target("3").load().migrate();
    JdbcClient database = JdbcClient.create(source);
    database
        .sql("insert into account values (1, 0, 'ann', 'LEAD', 'x', true, " + NOW + ")")
        .update();
  }

  @Test
  void a_database_of_the_first_release_is_backed_up_before_it_is_brought_up_to_date() {
    firstRelease();
    beforeUpgrade("required").of(flyway());
    flyway().migrate();

    Backup backup = new BackupFolder(settings("required")).all().get(0);
    assertThat(backup.occasion()).isEqualTo(Occasion.UPGRADE);
    assertThat(backup.verified()).isTrue();
    assertThat(JdbcClient.create(source).sql("select username from account").query().listOfRows())
        .hasSize(1);
    DataSource again = TestDatabase.fresh();
    assertThat(Restore.into(again, backup.file(), disk).schema()).isEqualTo("3");
    assertThat(
            JdbcClient.create(again).sql("select username from account").query(String.class).list())
        .containsExactly("ann");
  }

  @Test
  void nothing_is_backed_up_where_nobody_has_entered_anything_or_nothing_changes() {
    beforeUpgrade("required").of(flyway());
    flyway().migrate();
    beforeUpgrade("required").of(flyway());
    assertThat(new BackupFolder(settings("required")).all()).isEmpty();
  }

  @Test
  void without_a_backup_there_is_no_upgrade_unless_it_is_waived() throws Exception {
    firstRelease();
    Files.writeString(disk.resolve("backups"), "a file where the folder should be");

    assertThatThrownBy(() -> beforeUpgrade("required").of(flyway()))
        .isInstanceOf(NoBackupBeforeUpgrade.class)
        .hasMessageContaining("Nothing was changed");
    beforeUpgrade("waived").of(flyway());
    assertThat(flyway().info().current().getVersion()).hasToString("3");
  }

  @Test
  void the_newest_of_each_sort_are_kept() {
    firstRelease();
    BackupFolder folder = new BackupFolder(settings("required"));
    BackUp backUp = new BackUp(folder);
    for (int night = 0; night < 4; night++) {
      backUp.of(source, Occasion.NIGHTLY, NIGHT.plusSeconds(86_400L * night));
    }
    backUp.of(source, Occasion.ASKED, NIGHT);

    assertThat(folder.all())
        .extracting(Backup::name)
        .containsExactly(
            "flangewright-20260605T023000Z-nightly.zip",
            "flangewright-20260604T023000Z-nightly.zip",
            "flangewright-20260602T023000Z-asked.zip");
    assertThat(folder.named("../secret")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "2026-06-03T02:29:00Z, 2026-06-02T02:30:00Z, false",
    "2026-06-03T02:30:00Z, 2026-06-02T02:30:00Z, true",
    "2026-06-03T09:00:00Z, 2026-06-02T02:30:00Z, true",
    "2026-06-03T09:00:00Z, 2026-06-03T02:31:00Z, false",
    "2026-06-03T01:00:00Z, , true",
  })
  void a_night_that_was_missed_is_made_up_for(Instant now, Instant newest, boolean due) {
    assertThat(
            NightlyBackup.isDue(
                LocalTime.of(2, 30), now, Optional.ofNullable(newest), ZoneId.of("UTC")))
        .isEqualTo(due);
  }

  @Test
  void a_file_that_is_no_backup_is_none() {
    assertThat(Backup.of(Path.of("flangewright.mv.db"), 1)).isEmpty();
    assertThat(Backup.of(Path.of("flangewright-20260602T023000Z-nightly.zip.failed"), 1))
        .hasValueSatisfying(backup -> assertThat(backup.verified()).isFalse());
  }
}
