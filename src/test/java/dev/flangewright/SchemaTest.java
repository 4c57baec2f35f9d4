package dev.flangewright;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.testing.DatabaseTest;
import jakarta.persistence.EntityManagerFactory;
import java.sql.Connection;
import java.sql.ResultSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.hibernate.SessionFactory;
import org.hibernate.metamodel.MappingMetamodel;
import org.hibernate.persister.entity.AbstractEntityPersister;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;

/** Entities and migrations agree; the context would not start if Hibernate found otherwise. */
@DatabaseTest
class SchemaTest {

  @Autowired Flyway flyway;
  @Autowired DataSource dataSource;
  @Autowired EntityManagerFactory entities;

  @Value("${spring.jpa.hibernate.ddl-auto}")
  String check;

  @Test
  void hibernate_compares_its_entities_with_the_schema_and_changes_nothing() {
    assertThat(check).isEqualTo("validate");
  }

  @Test
  void every_migration_has_been_applied_and_none_has_failed() {
    assertThat(flyway.info().pending()).isEmpty();
    assertThat(flyway.info().applied()).isNotEmpty();
    assertThat(flyway.info().all()).noneMatch(migration -> migration.getState().isFailed());
  }

  @Test
  void every_entity_has_its_table() throws Exception {
    Set<String> wanted = new TreeSet<>();
    ((MappingMetamodel) entities.unwrap(SessionFactory.class).getMetamodel())
        .forEachEntityDescriptor(
            entity -> wanted.add(((AbstractEntityPersister) entity).getTableName()));
    assertThat(wanted).isNotEmpty();
    assertThat(tables()).containsAll(wanted);
  }

  private Set<String> tables() throws Exception {
    String[] asEitherEngineCallsThem = {"TABLE", "BASE TABLE"};
    Set<String> names = new TreeSet<>();
    try (Connection connection = dataSource.getConnection();
        ResultSet rows =
            connection.getMetaData().getTables(null, null, "%", asEitherEngineCallsThem)) {
      while (rows.next()) {
        names.add(rows.getString("TABLE_NAME").toLowerCase(Locale.ROOT));
      }
    }
    return names;
  }
}
