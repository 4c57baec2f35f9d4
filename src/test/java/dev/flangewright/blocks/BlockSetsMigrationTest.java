package dev.flangewright.blocks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.testing.DatabaseTest;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

/** A register that was there before block sets were recorded, in a schema of its own. */
@DatabaseTest
class BlockSetsMigrationTest {

  private static final String SCHEMA = "before_block_sets";

  @Autowired DataSource dataSource;
  @Autowired JdbcTemplate sql;

  @AfterEach
  void takeTheSchemaAway() {
    sql.execute("drop schema if exists \"" + SCHEMA + "\" cascade");
  }

  @Test
  void every_code_that_parts_name_becomes_one_set_a_build() {
    migrateTo("3");
    build(1);
    build(2);
    part(1, 1, "B7");
    part(2, 1, "B7");
    part(3, 1, "B8");
    part(4, 1, "");
    part(5, 1, " ");
    part(6, 2, "B7");

    migrateTo("10");

    assertThat(strings("select build_id || ' ' || code from %s.block_set order by 1"))
        .containsExactly("1 B7", "1 B8", "2 B7");
    assertThat(strings("select distinct coalesce(hand, '') || place || note from %s.block_set"))
        .containsExactly("");
  }

  /** Hibernate numbers the rows of a step of 50 downwards from what the sequence yields next. */
  @Test
  void a_set_recorded_afterwards_gets_a_number_of_its_own() {
    migrateTo("3");
    build(1);
    part(1, 1, "B7");
    part(2, 1, "B8");
    migrateTo("10");

    Long highest = sql.queryForObject(in("select max(id) from %s.block_set"), Long.class);
    Long next =
        sql.queryForObject("select nextval('\"" + SCHEMA + "\"." + sequence() + "')", Long.class);
    assertThat(next - 49).isGreaterThan(highest);
  }

  private String sequence() {
    return strings(
            "select sequence_name from information_schema.sequences where sequence_schema = '"
                + SCHEMA
                + "' and lower(sequence_name) = 'block_set_seq'")
        .get(0);
  }

  private void migrateTo(String version) {
    Flyway.configure()
        .dataSource(dataSource)
        .schemas(SCHEMA)
        .locations("classpath:db/migration")
        .target(version)
        .load()
        .migrate();
  }

  private void build(long id) {
    sql.update(
        in(
            "insert into %s.build (id, version, name, note, register_style, contours_style,"
                + " created_at) values (?, 0, ?, '', '', '', current_timestamp)"),
        id,
        "Hull " + id);
    sql.update(
        in(
            "insert into %s.frame (id, version, build_id, code, position_mm)"
                + " values (?, 0, ?, 'F1', '0')"),
        id,
        id);
  }

  private void part(long id, long build, String blockSet) {
    sql.update(
        in(
            "insert into %s.part (id, version, build_id, frame_id, part_number, segment, hand,"
                + " drawing, drawing_issue, alloy, temper, thickness, inside_bend_radius_mm,"
                + " block_set, figures_version)"
                + " values (?, 0, ?, ?, ?, '', 'NONE', '', '', '2024', 'O', '1', '3', ?, 1)"),
        id,
        build,
        build,
        "P-" + id,
        blockSet);
  }

  private List<String> strings(String query) {
    return sql.queryForList(in(query), String.class);
  }

  private static String in(String statement) {
    return statement.replace("%s", "\"" + SCHEMA + "\"");
  }
}
