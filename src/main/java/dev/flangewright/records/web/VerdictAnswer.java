package dev.flangewright.records.web;

import dev.flangewright.records.Checkpoint;
import dev.flangewright.records.Verdict;
import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** What verifying a chain has shown. */
record VerdictAnswer(
    @Schema(description = "True if every link fits and the old checkpoint, if any, is contained.")
        boolean sound,
    @Schema(description = "Entries that fit together, from the first on.") long count,
    @Schema(description = "SHA-256 of the last of them, hexadecimal.") String head,
    @Schema(description = "Number of the first entry that does not fit; null if all do.")
        @Nullable Long brokenAt,
    @Schema(description = "What was found, as a sentence.") String said,
    @Schema(description = "What became of the old checkpoint; null if none was given.")
        @Nullable String ofCheckpoint) {

  static VerdictAnswer of(Verdict verdict, @Nullable Checkpoint old) {
    Verdict.Broken broken = verdict.broken();
    return new VerdictAnswer(
        verdict.isSound(),
        verdict.count(),
        verdict.head(),
        broken == null ? null : broken.seq(),
        verdict.sentence(),
        old == null ? null : verdict.oldSentence());
  }
}
