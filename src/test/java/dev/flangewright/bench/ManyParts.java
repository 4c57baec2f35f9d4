package dev.flangewright.bench;

import java.sql.Timestamp;
import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * Puts so many parts into a build that drawing each would take minutes: rows as the application
 * would have written them, every third with a piece whose form block was taken up today.
 */
public final class ManyParts {

  /** Above every number that the sequences of a test give. */
  private static final long FIRST_ID = 1_000_000_000L;

  private static final String PARTS =
      "insert into part (id, version, build_id, frame_id, part_number, segment, hand, drawing,"
          + " drawing_issue, alloy, temper, thickness, inside_bend_radius_mm, block_set,"
          + " figures_version, risk_mode, risk_level)"
          + " values (?, 0, ?, ?, ?, ?, ?, 'D', 'A', '2024', 'O', '1.2', '3', ?, 1, 'SPLIT', ?)";
  private static final String FLANGES =
      "insert into flange (id, version, part_id, name, kind, finished_width_mm, working_width_mm,"
          + " edge_condition, register_order, contour_order, stations, sketch)"
          + " values (?, 0, ?, 'outer', 'SHRINK', '20', '24', '', 1, 1, '', '')";
  private static final String PIECES =
      "insert into piece (id, version, part_id, build_id, number, state, stages_done, stages_total,"
          + " current_stage_code, current_stage_name, current_stage_begun, held, created_at,"
          + " created_by, log_lines)"
          + " values (?, 0, ?, ?, 1, 'IN_WORK', 4, 11, 'first', 'First', true, false, ?, 'ann', 9)";
  private static final String STAGES =
      "insert into piece_stage (id, version, piece_id, seq, code, name, kind, started_at,"
          + " started_by, clearance, needs_block)"
          + " values (?, 0, ?, 5, 'first', 'First', 'FORM_SHRINK', ?, 'lead', 'FORM_SHRINK',"
          + " 'FORM_BLOCK')";

  private final JdbcTemplate database;
  private final Timestamp now = new Timestamp(System.currentTimeMillis());

  public ManyParts(ApplicationContext context) {
    this.database = context.getBean(JdbcTemplate.class);
  }

  /** On the one frame that the build has; every two are a pair. */
  public void in(long buildId, int count) {
    long frame =
        database.queryForObject("select id from frame where build_id = ?", Long.class, buildId);
    long first = FIRST_ID + buildId * 10_000;
    List<Long> ids = LongStream.range(first, first + count).boxed().toList();
    List<Long> begun = ids.stream().filter(id -> id % 3 == 0).toList();
    insert(PARTS, ids, id -> part(buildId, frame, id));
    insert(FLANGES, ids, id -> new Object[] {id, id});
    insert(PIECES, begun, id -> new Object[] {id, id, buildId, now});
    insert(STAGES, begun, id -> new Object[] {id, id, now});
  }

  private static Object[] part(long buildId, long frame, long id) {
    String segment = "S" + id / 2;
    String hand = id % 2 == 0 ? "LEFT" : "RIGHT";
    String level = id % 5 == 0 ? "HIGH" : "LOW";
    return new Object[] {id, buildId, frame, "P-" + id, segment, hand, "B-" + segment, level};
  }

  private void insert(String sql, List<Long> ids, LongFunction<Object[]> row) {
    int[] unused = database.batchUpdate(sql, ids.stream().map(row::apply).toList());
  }
}
