package dev.flangewright.testing;

import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/**
 * Gives each Spring context a fresh, empty database on the engine that the system property {@code
 * flangewright.test.database} names: {@code h2} (the default) or {@code postgresql}.
 *
 * <p>H2 runs in memory with every setting that the application's own H2 address carries, so that a
 * mode or a compatibility switch is never different under test.
 */
public final class TestDatabase
    implements ApplicationContextInitializer<ConfigurableApplicationContext> {

  /** The system property that chooses the engine. */
  public static final String ENGINE_PROPERTY = "flangewright.test.database";

  @Override
  public void initialize(ConfigurableApplicationContext context) {
    String engine = System.getProperty(ENGINE_PROPERTY, "h2");
    switch (engine) {
      case "h2" -> useH2(context);
      case "postgresql" -> usePostgresql(context);
      default ->
          throw new IllegalArgumentException(
              ENGINE_PROPERTY + " must be h2 or postgresql, not '" + engine + "'");
    }
  }

  /** A fresh, empty database on that engine, outside any Spring context. */
  public static DataSource fresh() {
    if (System.getProperty(ENGINE_PROPERTY, "h2").equals("h2")) {
      return new DriverManagerDataSource(h2InMemory("", UUID.randomUUID().toString()), "sa", "");
    }
    PostgresServer server = PostgresServer.shared();
    return new DriverManagerDataSource(server.createDatabase(), server.user(), server.password());
  }

  private static void useH2(ConfigurableApplicationContext context) {
    H2Announcement.once();
    String production = context.getEnvironment().getProperty("spring.datasource.url", "");
    connect(context, h2InMemory(production, UUID.randomUUID().toString()), "sa", "");
  }

  private static void usePostgresql(ConfigurableApplicationContext context) {
    PostgresServer server = PostgresServer.shared();
    connect(context, server.createDatabase(), server.user(), server.password());
  }

  /** The address of an H2 database in memory with the settings of {@code production}. */
  static String h2InMemory(String production, String name) {
    String settings =
        production.startsWith("jdbc:h2:")
            ? Stream.of(production.split(";", -1))
                .skip(1)
                .filter(setting -> !onlyForFiles(setting))
                .map(setting -> ";" + setting)
                .collect(Collectors.joining())
            : "";
    return "jdbc:h2:mem:" + name + settings + ";DB_CLOSE_DELAY=-1";
  }

  private static boolean onlyForFiles(String setting) {
    return setting.isBlank()
        || setting.startsWith("AUTO_SERVER")
        || setting.startsWith("DB_CLOSE_DELAY")
        || setting.startsWith("FILE_LOCK");
  }

  private static void connect(
      ConfigurableApplicationContext context, String url, String user, String password) {
    TestPropertyValues.of(
            "spring.datasource.url=" + url,
            "spring.datasource.username=" + user,
            "spring.datasource.password=" + password,
            "flangewright.backup.at=never",
            "flangewright.backup.folder=target/backups/" + UUID.randomUUID())
        .applyTo(context);
  }

  /** Initialised once, so the line is printed once, however many contexts there are. */
  private static final class H2Announcement {

    static {
      System.out.println("Test database: H2 in memory, a new database for each context");
    }

    static void once() {
      // the class is initialised by the call
    }
  }
}
