package dev.flangewright.bench.web;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Whether the account that asks passes on a part's next job. */
record PassOnAnswer(
    long partId,
    @Schema(description = "Why; null if it was taken back.") @Nullable String reason) {}
