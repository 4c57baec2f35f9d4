package dev.flangewright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@DatabaseTest
class TestDatabaseTest {

  @Autowired DataSource dataSource;

  @Test
  void the_engine_that_was_asked_for_is_the_one_that_answers() throws SQLException {
    String asked = System.getProperty(TestDatabase.ENGINE_PROPERTY, "h2");

    try (Connection connection = dataSource.getConnection()) {
      assertThat(connection.getMetaData().getDatabaseProductName()).isEqualToIgnoringCase(asked);
    }
  }
}
