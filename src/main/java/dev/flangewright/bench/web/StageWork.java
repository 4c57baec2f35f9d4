package dev.flangewright.bench.web;

import dev.flangewright.bench.Quenching;
import dev.flangewright.bench.WorkDone;
import dev.flangewright.receipts.Ask;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What may be said with an entry; everything may be left out. */
record StageWork(
    @Schema(
            description = "Hours spent, 0 to 1000; they are logged when the stage is finished.",
            example = "1.5")
        @Nullable Double hours,
    @Schema(description = "At most 2000 characters.") @Nullable String note,
    @Schema(
            description =
                "What was damaged on the block that the stage was done on, at most 400 characters;"
                    + " read when the stage is finished. The block then waits for repair.",
            example = "corner chipped at station 4")
        @Nullable String blockDamage,
    @Schema(description = "The version of the piece that you saw; a later one is refused (409).")
        @Nullable Long pieceVersion,
    @Schema(description = "When it was done, if it is sent later; not in the future.")
        @Nullable Instant doneAt,
    @Schema(
            description =
                "With the finish of a heat treatment: when it was quenched, at most 24 hours back;"
                    + " when left out, as the stage was finished.")
        @Nullable Instant quenchedAt,
    @Schema(
            description =
                "With the finish of a heat treatment: true if it was annealed or aged, and not"
                    + " quenched.")
        @Nullable Boolean notQuenched,
    @Schema(
            description =
                "With the finish of a cut: mark of the batch that the piece was cut from. Needed where"
                    + " the build records batches of its metal.",
            example = "B-12")
        @Nullable String batch) {

  static final StageWork NOTHING_SAID =
      new StageWork(null, null, null, null, null, null, null, null);

  static StageWork of(@Nullable StageWork body) {
    return body == null ? NOTHING_SAID : body;
  }

  Ask ask(@Nullable UUID key, String what) {
    String said =
        "%s, hours %s, damaged %s, note %s"
            .formatted(what, hours, orNone(blockDamage), noteOrNone());
    String quench = quenching().equals(Quenching.NOT_SAID) ? "" : ", " + quenching();
    String cut = batch == null ? "" : ", batch " + batch;
    return new Ask(key, doneAt, said + quench + cut);
  }

  WorkDone done() {
    return WorkDone.in(hours, noteOrNone())
        .cutFrom(orNone(batch))
        .damaged(orNone(blockDamage))
        .quenched(quenching());
  }

  private Quenching quenching() {
    return new Quenching(quenchedAt, Boolean.TRUE.equals(notQuenched));
  }

  String noteOrNone() {
    return orNone(note);
  }

  private static String orNone(@Nullable String text) {
    return Objects.requireNonNullElse(text, "");
  }
}
