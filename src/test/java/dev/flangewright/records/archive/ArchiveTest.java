package dev.flangewright.records.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.people.Refused;
import dev.flangewright.records.Sha256;
import dev.flangewright.testing.TestDatabase;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/** Archives of a small database with awkward values, on either engine. */
@Tag("database")
class ArchiveTest {

  private static final Instant MADE = Instant.parse("2026-06-02T02:30:00Z");

  private static final List<@Nullable Double> DOUBLES =
      Arrays.asList(
          null,
          0.0,
          -0.0,
          0.1,
          1.0 / 3,
          Double.MAX_VALUE,
          -Double.MAX_VALUE,
          Double.MIN_NORMAL,
          1e-17,
          123456789.123456789,
          Double.NaN,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "null",
          "a \"quoted\" one, with a comma; and a \\ backslash",
          "two\r\nlines\nand\ta tab\u0001",
          "line\u2028separator \u0085 next line",
          "rivet 🔩 and a grin 😀",
          "Größe ½ µm – “dash” \uFEFF",
          "e\u0301 is not \u00e9",
          "'; drop table account; --",
          "</script><b>");

  @TempDir Path folder;

  private final DataSource source = TestDatabase.fresh();
  private JdbcClient database;

  @BeforeEach
  void fill() throws Exception {
    Migrations.bringUpToDate(source);
    database = JdbcClient.create(source);
    run(
        "create table nasty (id bigint primary key, version bigint not null, said varchar(2000),"
            + " measured double precision, held boolean, happened timestamp with time zone,"
            + " on_day date, price numeric(12, 3), picture bytea, twin_id bigint references nasty,"
            + " small integer)");
    run(
        "create table nasty_word (nasty_id bigint not null references nasty, word varchar(60)"
            + " not null, primary key (nasty_id, word))");
    run(
        "insert into account values (1, 0, 'ann', 'LEAD', 'x', true,"
            + " timestamp with time zone '2026-06-02 12:00:00.123456+02:00')");
    Random random = new Random(20260602);
    try (Connection connection = source.getConnection();
        PreparedStatement row =
            connection.prepareStatement(
                "insert into nasty values (?, 0, ?, ?, ?, ?, ?, ?, ?, null, ?)")) {
      for (int id = 1; id <= 700; id++) {
        bind(row, id, random);
        row.executeUpdate();
      }
    }
    run("update nasty set twin_id = case when mod(id, 2) = 0 then id - 1 else id + 1 end");
    run("insert into nasty_word values (1, 'Z'), (1, 'a'), (1, 'B'), (1, '_'), (1, 'ä')");
  }

  private static void bind(PreparedStatement row, int id, Random random) throws Exception {
    Double measured =
        id <= DOUBLES.size()
            ? DOUBLES.get(id - 1)
            : Double.valueOf(finite(Double.longBitsToDouble(random.nextLong())));
    byte[] picture = new byte[random.nextInt(300)];
    random.nextBytes(picture);
    row.setLong(1, id);
    row.setString(2, id % 7 == 0 ? null : TEXTS.get(id % TEXTS.size()));
    row.setObject(3, measured, java.sql.Types.DOUBLE);
    row.setObject(4, id % 3 == 0 ? null : id % 3 == 1, java.sql.Types.BOOLEAN);
    row.setObject(
        5,
        Instant.ofEpochSecond(random.nextLong(4_000_000_000L), random.nextInt(1_000_000) * 1000L)
            .atOffset(ZoneOffset.ofHours(5)));
    row.setObject(6, java.time.LocalDate.ofEpochDay(random.nextInt(40_000)));
    row.setBigDecimal(7, java.math.BigDecimal.valueOf(random.nextInt(), 3));
    row.setBytes(8, id % 5 == 0 ? null : picture);
    row.setInt(9, random.nextInt());
  }

  private static double finite(double value) {
    return Double.isFinite(value) && Math.abs(value) >= Double.MIN_NORMAL ? value : 1.5;
  }

  private void run(String sql) {
    database.sql(sql).update();
  }

  private Path written() {
    Path file = folder.resolve("written.zip");
    WriteArchive.of(source, MADE, file);
    return file;
  }

  /** An empty database with the tables of this test. */
  private static DataSource prepared(DataSource target) {
    Migrations.bringUpToDate(target);
    JdbcClient client = JdbcClient.create(target);
    client
        .sql(
            "create table nasty (id bigint primary key, version bigint not null, said varchar(2000),"
                + " measured double precision, held boolean, happened timestamp with time zone,"
                + " on_day date, price numeric(12, 3), picture bytea, twin_id bigint references"
                + " nasty, small integer)")
        .update();
    client
        .sql(
            "create table nasty_word (nasty_id bigint not null references nasty, word varchar(60)"
                + " not null, primary key (nasty_id, word))")
        .update();
    return target;
  }

  private static DataSource h2() {
    return new DriverManagerDataSource(
        "jdbc:h2:mem:" + java.util.UUID.randomUUID() + ";DB_CLOSE_DELAY=-1", "sa", "");
  }

  @Test
  void every_value_comes_back_on_this_engine_and_after_a_detour_over_the_other() throws Exception {
    Path file = written();
    Manifest first;
    DataSource other = prepared(h2());
    try (Archive archive = Archive.open(file)) {
      first = archive.manifest();
      LoadArchive.into(other, archive);
    }
    Path again = folder.resolve("again.zip");
    WriteArchive.of(other, MADE, again);
    DataSource back = prepared(TestDatabase.fresh());
    try (Archive archive = Archive.open(again)) {
      LoadArchive.into(back, archive);
    }
    Manifest last = WriteArchive.of(back, MADE, folder.resolve("last.zip"));

    assertThat(contents(last)).isEqualTo(contents(first));
    assertThat(first.rows()).isGreaterThan(700);
    assertThat(rows(back)).isEqualTo(rows(source));
  }

  private static Map<String, String> contents(Manifest manifest) {
    return manifest.tables().stream()
        .collect(
            java.util.stream.Collectors.toMap(
                Manifest.TableFile::table, table -> table.rows() + " " + table.contents()));
  }

  /** An archive writes −0 as 0: the one value that does not come back as it was. */
  private static @Nullable Object unsignedZero(@Nullable Object measured) {
    return measured instanceof Double value && value == 0 ? (Object) 0.0 : measured;
  }

  /** Read by other means than the archive's own. */
  private static List<List<Object>> rows(DataSource from) {
    return JdbcClient.create(from)
        .sql("select * from nasty order by id")
        .query(
            (row, number) ->
                Arrays.<Object>asList(
                    row.getLong("id"),
                    row.getString("said"),
                    unsignedZero(row.getObject("measured")),
                    row.getObject("held"),
                    row.getObject("happened", java.time.OffsetDateTime.class).toInstant(),
                    row.getObject("on_day", java.time.LocalDate.class),
                    row.getBigDecimal("price"),
                    Arrays.toString(row.getBytes("picture")),
                    row.getLong("twin_id"),
                    row.getInt("small")))
        .list();
  }

  @Test
  void ids_that_were_given_are_not_given_again() throws Exception {
    for (int i = 0; i < 3; i++) {
      database.sql("select nextval('account_seq')").query(Long.class).single();
    }
    long next = positions(source).get("account_seq");
    DataSource target = prepared(TestDatabase.fresh());
    try (Archive archive = Archive.open(written())) {
      LoadArchive.into(target, archive);
    }
    assertThat(
            JdbcClient.create(target)
                .sql("select nextval('account_seq')")
                .query(Long.class)
                .single())
        .isEqualTo(next)
        .isGreaterThan(1);
  }

  private static Map<String, Long> positions(DataSource from) throws Exception {
    try (Connection connection = from.getConnection()) {
      return Sequences.positions(connection);
    }
  }

  @Test
  void no_table_is_forgotten_and_nobody_stays_signed_in() throws Exception {
    List<String> tables =
        Manifest.class
            .cast(WriteArchive.of(source, MADE, folder.resolve("all.zip")))
            .tables()
            .stream()
            .map(Manifest.TableFile::table)
            .toList();
    List<String> inDatabase =
        database
            .sql(
                "select lower(table_name) from information_schema.tables"
                    + " where lower(table_schema) = 'public'")
            .query(String.class)
            .list();
    assertThat(inDatabase)
        .filteredOn(
            name -> !name.startsWith("spring_session") && !name.equals("flyway_schema_history"))
        .containsExactlyInAnyOrderElementsOf(tables);
    assertThat(tables).doesNotContain("spring_session", "flyway_schema_history");
  }

  @Test
  void what_people_do_meanwhile_is_in_the_archive_as_a_whole_or_not_at_all() throws Exception {
    run("create table purse_a (id bigint primary key, coins bigint not null)");
    run("create table purse_z (id bigint primary key, coins bigint not null)");
    run("insert into purse_a values (1, 1000)");
    run("insert into purse_z values (1, 0)");
    AtomicBoolean enough = new AtomicBoolean();
    Thread people = new Thread(() -> moveCoins(enough));
    people.start();
    try {
      for (int round = 0; round < 5; round++) {
        Path file = folder.resolve("round" + round + ".zip");
        WriteArchive.of(source, MADE, file);
        assertThat(coins(file, "purse_a") + coins(file, "purse_z")).isEqualTo(1000);
      }
    } finally {
      enough.set(true);
      people.join();
    }
    assertThat(database.sql("select coins from purse_z").query(Long.class).single())
        .as("somebody worked meanwhile")
        .isPositive();
  }

  private void moveCoins(AtomicBoolean enough) {
    try (Connection connection = source.getConnection();
        var statement = connection.createStatement()) {
      connection.setAutoCommit(false);
      while (!enough.get()) {
        statement.execute("update purse_a set coins = coins - 1");
        statement.execute("update purse_z set coins = coins + 1");
        connection.commit();
      }
    } catch (java.sql.SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private static long coins(Path file, String table) throws IOException {
    String line = content(file, "tables/" + table + ".jsonl");
    return Long.parseLong(line.replaceAll("(?s).*\"coins\":(-?\\d+).*", "$1"));
  }

  private static String content(Path file, String name) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile());
        InputStream in = zip.getInputStream(zip.getEntry(name))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void a_byte_that_was_changed_anywhere_is_noticed_or_makes_no_difference() throws IOException {
    Path file = written();
    byte[] whole = Files.readAllBytes(file);
    Manifest manifest;
    try (Archive archive = Archive.open(file)) {
      manifest = archive.manifest();
    }
    Path changed = folder.resolve("changed.zip");
    int refused = 0;
    for (int at = 0; at < whole.length; at += 131) {
      byte[] bytes = whole.clone();
      bytes[at] ^= 0x10;
      Files.write(changed, bytes);
      try (Archive archive = Archive.open(changed)) {
        assertThat(archive.manifest()).as("byte %d", at).isEqualTo(manifest);
      } catch (Refused expected) {
        refused++;
      }
    }
    assertThat(refused).isGreaterThan(whole.length / 131 * 8 / 10);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01, 0.5, 0.9, 0.999})
  void a_file_that_was_cut_short_is_refused(double share) throws IOException {
    byte[] whole = Files.readAllBytes(written());
    Path cut = folder.resolve("cut.zip");
    Files.write(cut, Arrays.copyOf(whole, (int) (whole.length * share)));

    assertThatThrownBy(() -> Archive.open(cut))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("cut short");
  }

  @Test
  void another_zip_file_and_one_with_a_foreign_name_are_refused() throws IOException {
    Path other = zip(Map.of("holiday.txt", "sun"));
    assertThatThrownBy(() -> Archive.open(other)).hasMessageContaining("not an archive");
    Path climbing = zip(Map.of("manifest.json", "{}", "../../etc/passwd", "x"));
    assertThatThrownBy(() -> Archive.open(climbing)).hasMessageContaining("not an archive");
  }

  @Test
  void an_archive_in_which_a_table_is_missing_is_refused() throws IOException {
    Path file = written();
    Path without = folder.resolve("without.zip");
    copyWithout(file, without, "tables/nasty_word.jsonl");
    assertThatThrownBy(() -> Archive.open(without))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("not those that its manifest names");
  }

  @Test
  void an_archive_that_would_flood_the_disk_is_refused_before_it_is_unpacked() throws IOException {
    Manifest.TableFile flood =
        new Manifest.TableFile("flood", "tables/flood.jsonl", 1, "", 1L << 40, "");
    Path file = zip(named(flood, "1"), "x");
    assertThatThrownBy(() -> Archive.open(file)).hasMessageContaining("unpacks to too much");
  }

  @Test
  void a_file_that_is_longer_than_its_manifest_says_is_read_no_further() throws IOException {
    Manifest.TableFile modest =
        new Manifest.TableFile("flood", "tables/flood.jsonl", 1, "", 10, Sha256.of(new byte[10]));
    Path file = zip(named(modest, "1"), "x".repeat(5_000_000));
    assertThatThrownBy(() -> Archive.open(file)).hasMessageContaining("changed or damaged");
  }

  @Test
  void an_archive_of_a_newer_program_is_refused_and_nothing_is_touched() throws IOException {
    Manifest.TableFile table =
        new Manifest.TableFile("t", "tables/t.jsonl", 0, "", 0, Sha256.of(new byte[0]));
    Path file = zip(named(table, "9000"), "");
    DataSource empty = TestDatabase.fresh();
    assertThatThrownBy(() -> Restore.into(empty, file, folder))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("newer version");
    assertThat(tablesOf(empty)).isEmpty();
  }

  private static List<Table> tablesOf(DataSource from) {
    try (Connection connection = from.getConnection()) {
      return Tables.of(connection);
    } catch (java.sql.SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Manifest named(Manifest.TableFile table, String schema) {
    return new Manifest(
        Manifest.FORMAT, 1, "x", schema, "x", MADE, List.of(table), Map.of(), List.of());
  }

  private Path zip(Manifest manifest, String tableContent) throws IOException {
    byte[] text = ManifestText.of(manifest);
    return zip(
        Map.of(
            Archive.MANIFEST,
            new String(text, StandardCharsets.UTF_8),
            Archive.MANIFEST_DIGEST,
            Sha256.of(text),
            manifest.tables().get(0).file(),
            tableContent));
  }

  private Path zip(Map<String, String> files) throws IOException {
    Path file = Files.createTempFile(folder, "made", ".zip");
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, String> one : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(one.getKey()));
        zip.write(one.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    return file;
  }

  private static void copyWithout(Path from, Path to, String left) throws IOException {
    try (ZipFile zip = new ZipFile(from.toFile());
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(to))) {
      for (ZipEntry entry : zip.stream().map(ZipEntry.class::cast).toList()) {
        if (!entry.getName().equals(left)) {
          out.putNextEntry(new ZipEntry(entry.getName()));
          Objects.requireNonNull(zip.getInputStream(entry)).transferTo(out);
          out.closeEntry();
        }
      }
    }
  }
}
