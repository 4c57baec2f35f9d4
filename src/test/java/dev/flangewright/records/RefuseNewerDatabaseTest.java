package dev.flangewright.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.records.backup.WithoutBackup;
import dev.flangewright.testing.TestDatabase;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

@Tag("database")
class RefuseNewerDatabaseTest {

  private static final String HISTORY =
      "select \"installed_rank\" from \"flyway_schema_history\" order by 1";

  private final DataSource source = TestDatabase.fresh();

  @Test
  void a_database_of_a_newer_version_is_refused_before_anything_is_touched() {
    Flyway.configure().dataSource(source).target("3").load().migrate();
    JdbcClient database = JdbcClient.create(source);
    database
        .sql(
            "insert into \"flyway_schema_history\" (\"installed_rank\", \"version\","
                + " \"description\", \"type\", \"script\", \"installed_by\", \"execution_time\","
                + " \"success\") values (99, '9000', 'of tomorrow', 'SQL', 'V9000__of_tomorrow.sql',"
                + " 'x', 1, true)")
        .update();
    List<Integer> before = database.sql(HISTORY).query(Integer.class).list();

    assertThatThrownBy(() -> new RefuseNewerDatabase(WithoutBackup.needed()).migrate(flyway()))
        .isInstanceOf(NewerDatabase.class)
        .hasMessageContaining("9000 (of tomorrow)");
    assertThat(database.sql(HISTORY).query(Integer.class).list()).isEqualTo(before);
  }

  @Test
  void an_empty_and_an_older_database_are_brought_up_to_date() {
    Flyway.configure().dataSource(source).target("3").load().migrate();
    new RefuseNewerDatabase(WithoutBackup.needed()).migrate(flyway());
    assertThat(flyway().info().pending()).isEmpty();
    new RefuseNewerDatabase(WithoutBackup.needed()).migrate(flyway());
    assertThat(flyway().info().pending()).isEmpty();
  }

  private Flyway flyway() {
    return Flyway.configure().dataSource(source).load();
  }
}
