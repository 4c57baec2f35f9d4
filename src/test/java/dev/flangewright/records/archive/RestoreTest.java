package dev.flangewright.records.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.people.Refused;
import dev.flangewright.testing.TestDatabase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

/** An archive into an empty database, on either engine. */
@Tag("database")
class RestoreTest {

  private static final Instant MADE = Instant.parse("2026-06-02T02:30:00Z");
  private static final String NOW = "timestamp with time zone '2026-06-02 12:00:00+00:00'";

  @TempDir Path folder;

  private final DataSource source = TestDatabase.fresh();
  private final DataSource empty = TestDatabase.fresh();

  private Path archiveOfTheFirstRelease() {
    Migrations.bringTo(source, "3");
    JdbcClient database = JdbcClient.create(source);
    database
        .sql("insert into account values (1, 0, 'ann', 'LEAD', 'x', true, " + NOW + ")")
        .update();
    database.sql("insert into build values (1, 0, 'Hull', '', '', '', " + NOW + ")").update();
    Path file = folder.resolve("old.zip");
    WriteArchive.of(source, MADE, file);
    return file;
  }

  @Test
  void an_archive_of_the_first_release_is_brought_up_to_date_with_its_rows() throws Exception {
    Manifest manifest = Restore.into(empty, archiveOfTheFirstRelease(), folder);

    assertThat(manifest.schema()).isEqualTo("3");
    JdbcClient restored = JdbcClient.create(empty);
    assertThat(restored.sql("select username from account").query(String.class).list())
        .containsExactly("ann");
    assertThat(restored.sql("select count(*) from route").query(Long.class).single())
        .as("what later migrations made of the build")
        .isPositive();
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left)
          .as("nothing is left of the stage")
          .containsExactly(folder.resolve("old.zip"));
    }
  }

  @Test
  void a_database_that_was_only_just_made_counts_as_empty_and_one_with_an_account_does_not() {
    Path file = archiveOfTheFirstRelease();
    Migrations.bringUpToDate(empty);
    Restore.into(empty, file, folder);

    assertThatThrownBy(() -> Restore.into(empty, file, folder))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("not empty");
  }

  @Test
  void a_damaged_archive_leaves_the_database_as_it_was() throws Exception {
    byte[] bytes = Files.readAllBytes(archiveOfTheFirstRelease());
    Arrays.fill(bytes, bytes.length / 3, bytes.length / 2, (byte) 0);
    Path damaged = Files.write(folder.resolve("damaged.zip"), bytes);

    assertThatThrownBy(() -> Restore.into(empty, damaged, folder)).isInstanceOf(Refused.class);
    assertThat(
            JdbcClient.create(empty)
                .sql(
                    "select count(*) from information_schema.tables"
                        + " where lower(table_schema) = 'public'")
                .query(Long.class)
                .single())
        .isZero();
  }

  @Test
  void a_rehearsal_tells_what_the_archive_holds() {
    assertThat(Rehearse.of(archiveOfTheFirstRelease(), folder).rows()).isPositive();
  }
}
