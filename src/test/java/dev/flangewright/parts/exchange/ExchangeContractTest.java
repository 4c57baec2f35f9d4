package dev.flangewright.parts.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.parts.MakeBuild;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Refused;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.testing.DatabaseTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.transaction.support.TransactionTemplate;

/** What import and export promise, on a real database. */
@DatabaseTest
class ExchangeContractTest {

  private static final AtomicInteger BUILDS = new AtomicInteger();
  private static final String NUMBER = "TW-F07-S3L";
  private static final String REGISTER = Loft.register(Loft.outer(NUMBER), Loft.inner(NUMBER));
  private static final String CONTOURS = Loft.contours(Loft.arcs(NUMBER));

  @Autowired private MakeBuild makeBuild;
  @Autowired private ImportRegister imports;
  @Autowired private ExportRegister exports;
  @Autowired private Parts parts;
  @Autowired private TransactionTemplate transaction;

  private long build;

  @BeforeEach
  void anEmptyBuild() {
    SignedIn.as(
        "lead",
        Role.LEAD,
        () -> build = makeBuild.named("Hull " + BUILDS.incrementAndGet(), "").id());
  }

  @Test
  void a_preview_stores_nothing() {
    ImportPlan plan = preview(REGISTER, CONTOURS);

    assertThat(plan.newParts()).containsExactly(NUMBER);
    assertThat(plan.register()).isEqualTo(new Counts(2, 0, 0));
    assertThat(plan.contours()).isEqualTo(new Counts(2, 0, 0));
    assertThat(plan.problems()).isEmpty();
    assertThat(parts.findByBuildIdAndPartNumber(build, NUMBER)).isEmpty();
  }

  @Test
  void an_import_stores_parts_contours_and_figures() {
    apply(REGISTER, CONTOURS);

    transaction.executeWithoutResult(
        tx -> {
          Part part = parts.findByBuildIdAndPartNumber(build, NUMBER).orElseThrow();
          assertThat(part.frame().positionMm().text()).isEqualTo("3150.0");
          assertThat(part.drawn().thickness()).isEqualTo("1.20");
          assertThat(part.flanges()).hasSize(2).allMatch(f -> f.stations().list().size() == 9);
          assertThat(part.summary().figuresProblem()).isNull();
          assertThat(part.flange("outer").orElseThrow().summary().gatherMm()).isPositive();
          assertThat(part.flange("inner").orElseThrow().summary().gatherMm()).isNegative();
        });
  }

  @Test
  void the_same_file_again_changes_nothing() {
    apply(REGISTER, CONTOURS);
    long version = version();

    assertThat(preview(REGISTER, CONTOURS).changesNothing()).isTrue();
    assertThat(apply(REGISTER, CONTOURS).stored().changesNothing()).isTrue();
    assertThat(version()).isEqualTo(version);
  }

  @Test
  void rows_in_another_order_change_nothing() {
    apply(REGISTER, CONTOURS);
    List<String> inner = new ArrayList<>(Loft.innerArc(NUMBER, 9));
    inner.addAll(Loft.outerArc(NUMBER, 9));

    String turned = Loft.register(Loft.inner(NUMBER), Loft.outer(NUMBER));

    assertThat(apply(turned, Loft.contours(inner)).stored().changesNothing()).isTrue();
    assertThat(register()).isEqualTo(REGISTER);
    assertThat(contours()).isEqualTo(CONTOURS);
  }

  @Test
  void a_changed_row_is_shown_before_it_is_accepted() {
    apply(REGISTER, CONTOURS);

    ImportPlan plan =
        preview(
            REGISTER.replace(",C,2024", ",D,2024").replace("18.0,22.50", "18.0,21"),
            CONTOURS.replace("outer,1,250.00", "outer,1,250.10"));

    assertThat(plan.changes())
        .containsExactly(
            new Change(NUMBER, "", "drawing_issue", "C", "D"),
            new Change(NUMBER, "outer", "working_width_mm", "22.50", "21"),
            new Change(NUMBER, "inner", "working_width_mm", "22.50", "21"),
            new Change(NUMBER, "outer", "station 1 x_mm", "250.00", "250.10"));
    assertThat(plan.register()).isEqualTo(new Counts(0, 2, 0));
    assertThat(plan.contours()).isEqualTo(new Counts(0, 1, 1));
    assertThat(register()).isEqualTo(REGISTER);
  }

  @Test
  void an_accepted_change_is_stored_with_new_figures() {
    apply(REGISTER, CONTOURS);
    double before = gather();

    apply(REGISTER.replace("18.0,22.50", "18.0,30"), null);

    assertThat(register()).contains("18.0,30");
    assertThat(gather()).isGreaterThan(before);
  }

  @Test
  void one_bad_row_keeps_everything_out() {
    String twoParts = REGISTER + Loft.outer("TW-F07-S4L").replace("18.0", "-18.0") + "\n";

    assertThatThrownBy(() -> apply(twoParts, CONTOURS))
        .isInstanceOf(ImportRefused.class)
        .hasMessage(
            "There is 1 problem in the files; nothing was stored. The first: register.csv line 4,"
                + " finished_width_mm \"-18.0\": finished_width_mm must be above 0 and at most"
                + " 500.");
    assertThat(parts.findByBuildIdAndPartNumber(build, NUMBER)).isEmpty();
  }

  @Test
  void a_kind_against_its_contour_is_refused_with_the_radius_found() {
    ImportPlan plan = preview(REGISTER.replace("outer,shrink", "outer,stretch"), CONTOURS);

    assertThat(plan.problems()).hasSize(1);
    Problem problem = plan.problems().get(0);
    assertThat(problem.line()).isEqualTo(2);
    assertThat(problem.column()).isEqualTo("flange_kind");
    // The loft is rounded to 0.01 mm, which moves the radius found by about a millimetre.
    assertThat(problem.reason())
        .matches(
            "flange_kind of outer is stretch, but the contour is shrink: shrink with a radius of"
                + " (499|500)\\.\\d mm at stations 1 to 9 .*");
  }

  @Test
  void a_flange_wider_than_its_contour_allows_is_refused_at_the_station() {
    String wide = REGISTER.replace("inner,stretch,18.0,22.50", "inner,stretch,18.0,499");

    assertThat(preview(wide, CONTOURS).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.file()).isEqualTo("contours.csv");
              assertThat(problem.line()).isEqualTo(11);
              assertThat(problem.column()).isEqualTo("working_width_mm");
              assertThat(problem.reason())
                  .contains("station 1")
                  .contains("wider than its contour allows");
            });
  }

  @Test
  void a_contour_that_crosses_itself_is_refused_at_a_station() {
    List<String> rows = new ArrayList<>(Loft.arcs(NUMBER));
    rows.set(6, NUMBER + ",outer,7,240.00,445.00,88.6,");

    assertThat(preview(REGISTER, Loft.contours(rows)).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.file()).isEqualTo("contours.csv");
              assertThat(problem.reason()).contains("crosses or touches itself");
            });
  }

  @Test
  void stations_of_an_unknown_flange_are_refused() {
    assertThat(preview(null, CONTOURS).problems())
        .extracting(Problem::line, Problem::reason)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                2, "there is no flange outer of " + NUMBER + " (9 rows, to line 10)"),
            org.assertj.core.groups.Tuple.tuple(
                11, "there is no flange inner of " + NUMBER + " (9 rows, to line 19)"));
  }

  @Test
  void a_register_that_cannot_be_read_is_not_held_against_its_contours() {
    assertThat(preview(REGISTER.replace("part_number,", "part,"), CONTOURS).problems())
        .isNotEmpty()
        .allMatch(problem -> problem.file().equals("register.csv"));
  }

  @Test
  void the_register_may_come_first_and_the_contours_later() {
    assertThat(apply(REGISTER, null).stored().notices())
        .contains(
            "Flanges without a contour: 2. They have no figures until contours.csv brings one.");

    apply(null, CONTOURS);

    assertThat(register()).isEqualTo(REGISTER);
    assertThat(contours()).isEqualTo(CONTOURS);
  }

  @Test
  void a_contour_alone_is_checked_against_the_stored_flange() {
    apply(REGISTER.replace("outer,shrink", "outer,plain"), null);

    assertThat(preview(null, Loft.contours(Loft.outerArc(NUMBER, 9))).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.file()).isEqualTo("contours.csv");
              assertThat(problem.reason()).contains("is plain, but the contour is shrink");
            });
  }

  @Test
  void a_new_width_is_checked_against_the_stored_contour() {
    apply(REGISTER, CONTOURS);

    assertThat(preview(REGISTER.replace("stretch,18.0,22.50", "stretch,18.0,499"), null).problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.line()).isEqualTo(3));
  }

  @Test
  void parts_that_the_file_does_not_name_are_left_alone() {
    apply(REGISTER, CONTOURS);

    ImportPlan plan = apply(Loft.register(Loft.outer("TW-F07-S4L")), null).stored();

    assertThat(plan.notices())
        .contains("Parts of the build that are not in register.csv: 1. They stay as they are.");
    assertThat(register()).isEqualTo(REGISTER + Loft.outer("TW-F07-S4L") + "\n");
  }

  @Test
  void an_unknown_alloy_is_a_notice() {
    ImportPlan plan = preview(REGISTER.replace("2024,T3", "9999,T9"), CONTOURS);

    assertThat(plan.problems()).isEmpty();
    assertThat(plan.notices())
        .contains("No table has 9999 T9, so no limits can be computed; parts: 1.");
  }

  @Test
  void a_frame_that_moves_is_shown() {
    apply(REGISTER, CONTOURS);
    String moved = REGISTER.replace("3150.0", "3150.5");

    assertThat(preview(moved, null).changes())
        .containsExactly(new Change("F07", "", "frame_position_mm", "3150.0", "3150.5"));
    apply(moved, null);
    assertThat(register()).isEqualTo(moved);
  }

  @ParameterizedTest
  @ValueSource(strings = {"plain", "crlf", "bom", "quoted", "no final line end"})
  void an_export_gives_the_files_back_byte_for_byte(String style) {
    String odd =
        REGISTER
            .replace("S3,", "\"S3, \"\"upper\"\"\nhalf\",")
            .replace("1.20", "20 SWG")
            .replace("BS-07-3", "<b>BS</b> \u00e9");
    String register = styled(odd, style);
    String contours = styled(CONTOURS.replace(",88.0,", ",88.0,25.0"), style);

    apply(register, contours);

    assertThat(register()).isEqualTo(register);
    assertThat(contours()).isEqualTo(contours);
    assertThat(preview(register, contours).changesNothing()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.05", "0.10", "0", ""})
  void a_tolerance_comes_back_as_it_was_written(String tolerance) {
    String fitted = Loft.fitted(tolerance, Loft.outer(NUMBER), Loft.inner(NUMBER));

    apply(fitted, CONTOURS);

    assertThat(register()).isEqualTo(fitted);
    assertThat(contours()).isEqualTo(CONTOURS);
    assertThat(preview(fitted, CONTOURS).changesNothing()).isTrue();
  }

  @Test
  void a_file_without_tolerances_leaves_those_that_flanges_have() {
    apply(Loft.fitted("0.10", Loft.outer(NUMBER), Loft.inner(NUMBER)), CONTOURS);

    assertThat(preview(REGISTER, CONTOURS).changesNothing()).isTrue();
    apply(REGISTER.replace(",C,2024", ",D,2024"), null);

    assertThat(register())
        .isEqualTo(
            Loft.fitted("0.10", Loft.outer(NUMBER), Loft.inner(NUMBER))
                .replace(",C,2024", ",D,2024"));
  }

  @Test
  void a_new_tolerance_is_shown_and_taken() {
    apply(REGISTER, CONTOURS);
    String fitted = Loft.fitted("0.10", Loft.outer(NUMBER), Loft.inner(NUMBER));

    assertThat(preview(fitted, null).changes())
        .containsExactly(
            new Change(NUMBER, "outer", "fit_tolerance_mm", "", "0.10"),
            new Change(NUMBER, "inner", "fit_tolerance_mm", "", "0.10"));
    apply(fitted, null);
    assertThat(register()).isEqualTo(fitted);
  }

  @Test
  void a_tolerance_out_of_range_is_refused_and_one_too_small_names_the_station() {
    assertThat(preview(Loft.fitted("5.1", Loft.outer(NUMBER)), null).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.column()).isEqualTo("fit_tolerance_mm");
              assertThat(problem.reason()).isEqualTo("fit_tolerance_mm must be from 0 to 5");
            });
    List<String> rows = new ArrayList<>(Loft.outerArc(NUMBER, 9));
    rows.set(4, NUMBER + ",outer,5,0.00,503.00,88.4,");
    assertThat(preview(Loft.fitted("0.1", Loft.outer(NUMBER)), Loft.contours(rows)).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.file()).isEqualTo("contours.csv");
              assertThat(problem.line()).isEqualTo(6);
              assertThat(problem.reason())
                  .startsWith("station 5: fit_tolerance_mm is 0.1: no fair curve");
            });
  }

  @Test
  void an_empty_build_exports_its_headers() {
    assertThat(register()).isEqualTo(Loft.REGISTER_HEADER + "\r\n");
    assertThat(contours()).isEqualTo(Loft.CONTOURS_HEADER + "\r\n");
  }

  @Test
  void an_unknown_build_is_unknown() {
    assertThatThrownBy(() -> exports.register(-1, new ByteArrayOutputStream()))
        .isInstanceOf(Refused.class);
    build = -1;
    assertThatThrownBy(() -> preview(REGISTER, null)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> apply(REGISTER, null)).isInstanceOf(Refused.class);
  }

  @Test
  void no_file_at_all_is_refused() {
    assertThatThrownBy(() -> preview(null, null))
        .isInstanceOf(Refused.class)
        .hasMessage("Choose register.csv, contours.csv or both.");
  }

  @Test
  void a_fitter_may_not_import() {
    SignedIn.as(
        "fitter",
        Role.FITTER,
        () ->
            assertThatThrownBy(
                    () -> imports.apply(build, files(REGISTER, CONTOURS), Progress.UNSEEN))
                .isInstanceOf(AccessDeniedException.class));
  }

  @Test
  void what_was_shown_is_stored_or_nothing() {
    ImportPlan shown = preview(REGISTER, CONTOURS);
    apply(REGISTER, null);

    assertThatThrownBy(
            () ->
                as(
                    () ->
                        imports.applyAsShown(
                            build,
                            files(REGISTER, CONTOURS),
                            shown.fingerprint(),
                            Progress.UNSEEN)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("was changed since these rows were checked");
    assertThat(contours()).isEqualTo(Loft.CONTOURS_HEADER + "\r\n");
  }

  @Test
  void two_imports_into_one_build_at_once_store_the_rows_once() throws Exception {
    int both = 2;
    CountDownLatch begun = new CountDownLatch(both);
    Callable<String> one =
        () -> {
          begun.countDown();
          begun.await();
          try {
            apply(REGISTER, CONTOURS);
            return "stored";
          } catch (Refused refused) {
            return String.valueOf(refused.getMessage());
          }
        };
    ExecutorService people = Executors.newFixedThreadPool(both);
    List<Future<String>> outcomes = people.invokeAll(List.of(one, one));
    people.shutdown();

    List<String> said = List.of(outcomes.get(0).get(), outcomes.get(1).get());
    assertThat(said)
        .contains("stored")
        .allMatch(s -> s.matches("stored|Another import into this build is being stored.*"));
    assertThat(register()).isEqualTo(REGISTER);
  }

  private String styled(String text, String style) {
    return switch (style) {
      case "crlf" -> text.replace("\n", "\r\n");
      case "bom" -> "\ufeff" + text;
      case "quoted" -> quoted(text);
      case "no final line end" -> text.substring(0, text.length() - 1);
      default -> text;
    };
  }

  private static String quoted(String text) {
    StringBuilder all = new StringBuilder();
    for (var row : parsed(text)) {
      List<String> cells = row.toList().stream().map(WrittenRecord::inMarks).toList();
      all.append(String.join(",", cells)).append('\n');
    }
    return all.toString();
  }

  private static List<org.apache.commons.csv.CSVRecord> parsed(String text) {
    try {
      return org.apache.commons.csv.CSVParser.parse(text, org.apache.commons.csv.CSVFormat.RFC4180)
          .getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private double gather() {
    return transaction.execute(
        tx ->
            parts
                .findByBuildIdAndPartNumber(build, NUMBER)
                .orElseThrow()
                .flange("outer")
                .orElseThrow()
                .summary()
                .gatherMm());
  }

  private long version() {
    return parts.findByBuildIdAndPartNumber(build, NUMBER).orElseThrow().version();
  }

  private ImportPlan preview(@Nullable String register, @Nullable String contours) {
    return as(() -> imports.preview(build, files(register, contours), Progress.UNSEEN));
  }

  private ImportResult apply(@Nullable String register, @Nullable String contours) {
    return as(() -> imports.apply(build, files(register, contours), Progress.UNSEEN));
  }

  private static <T> T as(java.util.function.Supplier<T> work) {
    List<T> result = new ArrayList<>();
    SignedIn.as("lead", Role.LEAD, () -> result.add(work.get()));
    return result.get(0);
  }

  private static RegisterFiles files(@Nullable String register, @Nullable String contours) {
    return new RegisterFiles(resource(register), resource(contours));
  }

  private static @Nullable ByteArrayResource resource(@Nullable String text) {
    return text == null ? null : new ByteArrayResource(text.getBytes(StandardCharsets.UTF_8));
  }

  private String register() {
    return written(exports::register);
  }

  private String contours() {
    return written(exports::contours);
  }

  private interface Export {
    void of(long build, java.io.OutputStream to) throws IOException;
  }

  private String written(Export export) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      export.of(build, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
