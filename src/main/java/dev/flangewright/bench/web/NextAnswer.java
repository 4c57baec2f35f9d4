package dev.flangewright.bench.web;

import dev.flangewright.bench.NextJob;
import dev.flangewright.bench.NextJob.Standing;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** What the account that asks should do next. */
record NextAnswer(
    @Schema(description = "Jobs it can do now.") long toDo,
    @Schema(description = "Jobs it could do and passed on today.") long passedOn,
    @Schema(description = "Jobs that wait for something or somebody.") long waiting,
    @Schema(description = "Parts without figures to cut a blank by.") long notReady,
    @Schema(description = "In that order; within each the first to be done first.")
        List<NextJob> jobs) {

  static NextAnswer of(List<NextJob> ranked, int limit) {
    return new NextAnswer(
        count(ranked, Standing.TO_DO),
        count(ranked, Standing.PASSED_ON),
        count(ranked, Standing.WAITING),
        count(ranked, Standing.NOT_READY),
        ranked.stream().limit(limit).toList());
  }

  private static long count(List<NextJob> ranked, Standing standing) {
    return ranked.stream().filter(job -> job.standing() == standing).count();
  }
}
