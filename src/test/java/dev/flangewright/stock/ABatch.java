package dev.flangewright.stock;

import static org.springframework.test.util.ReflectionTestUtils.setField;

import dev.flangewright.parts.Build;
import java.time.Instant;
import java.time.LocalDate;
import org.springframework.beans.BeanUtils;

/** Batches as tests need them, outside any database. */
public final class ABatch {

  private static final Instant NOON = Instant.parse("2026-06-02T12:00:00Z");

  private ABatch() {}

  /** A delivery of 2024 T3, 1.2 mm, of cast 4711. */
  public static Batch of(String mark, String certificate) {
    Batch batch =
        new Batch(
            BeanUtils.instantiateClass(Build.class),
            mark,
            facts(certificate, "rack 2"),
            by("recorded"));
    setField(batch, "id", (long) mark.hashCode());
    return batch;
  }

  static BatchFacts facts(String certificate, String place) {
    return new BatchFacts(
        new SheetMetal("2024", "T3", 1.2),
        "1.2",
        "4711",
        certificate,
        "",
        null,
        null,
        null,
        LocalDate.of(2026, 5, 4),
        place,
        "");
  }

  static Signed by(String words) {
    return new Signed("ivo", NOON, words);
  }
}
