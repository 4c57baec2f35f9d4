package dev.flangewright.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/**
 * The one PostgreSQL server of this JVM. It runs in a container where a Docker engine answers and
 * has the image, otherwise from the binaries that the build brings along; it stops with the JVM.
 * The image {@code none} asks for the binaries.
 *
 * @param address JDBC address up to and with the slash before the database's name
 */
record PostgresServer(String address, String user, String password) {

  private static final String IMAGE_VARIABLE = "FLANGEWRIGHT_TEST_POSTGRES_IMAGE";
  private static final String DEFAULT_IMAGE = "postgres:17-alpine";
  private static final String CONNECTIONS = "300"; // one pool for each cached context

  /** The server, started by the first call. */
  static PostgresServer shared() {
    return Holder.SERVER;
  }

  /** Makes an empty database and returns its JDBC address. */
  String createDatabase() {
    String name = "test_" + UUID.randomUUID().toString().replace('-', '_');
    try (Connection connection = DriverManager.getConnection(address + "postgres", user, password);
        Statement statement = connection.createStatement()) {
      statement.execute("CREATE DATABASE " + name);
    } catch (SQLException e) {
      throw new IllegalStateException("No database could be made on " + address, e);
    }
    return address + name;
  }

  private static PostgresServer start() {
    String image = System.getenv().getOrDefault(IMAGE_VARIABLE, DEFAULT_IMAGE);
    if (image.equals("none")) {
      return embedded(IMAGE_VARIABLE + " is none");
    }
    if (!DockerClientFactory.instance().isDockerAvailable()) {
      return embedded("no Docker engine answered");
    }
    try {
      return inContainer(image);
    } catch (RuntimeException e) {
      return embedded("a Docker engine answered, but " + image + " did not start: " + e);
    }
  }

  @SuppressWarnings("resource") // runs until the JVM ends; Testcontainers then removes it
  private static PostgresServer inContainer(String image) {
    var container =
        new PostgreSQLContainer(DockerImageName.parse(image).asCompatibleSubstituteFor("postgres"))
            .withCommand("postgres", "-c", "fsync=off", "-c", "max_connections=" + CONNECTIONS);
    container.start();
    announce("in a container of the image " + image);
    return new PostgresServer(
        "jdbc:postgresql://%s:%d/".formatted(container.getHost(), container.getFirstMappedPort()),
        container.getUsername(),
        container.getPassword());
  }

  @SuppressWarnings("resource") // runs until the JVM ends; its own shutdown hook then stops it
  private static PostgresServer embedded(String why) {
    try {
      EmbeddedPostgres server =
          EmbeddedPostgres.builder().setServerConfig("max_connections", CONNECTIONS).start();
      announce("from the build's own binaries (" + why + ")");
      return new PostgresServer(
          "jdbc:postgresql://localhost:%d/".formatted(server.getPort()), "postgres", "postgres");
    } catch (IOException | RuntimeException e) {
      throw new IllegalStateException(
          "The tests need a PostgreSQL server and none could be started: "
              + why
              + ", and the build's own binaries failed too. Start Docker, or see DEVELOPERS.md.",
          e);
    }
  }

  private static void announce(String way) {
    System.out.println("Test database: PostgreSQL " + way + ", a new database for each context");
  }

  private static final class Holder {
    static final PostgresServer SERVER = start();
  }
}
