package dev.flangewright.bench.web;

import dev.flangewright.bench.NextJob;
import dev.flangewright.bench.NextJob.Standing;
import java.util.List;

/**
 * The bench's list in four groups: what the reader can do, what the reader passed on, what waits,
 * and what cannot be begun. Each shows its first few and says how many more there are.
 *
 * @param showMore how many to show if the reader asks for more
 */
record BenchPage(Group toDo, Group passedOn, Group waiting, Group notReady, int showMore) {

  private static final int MOST = 500;

  /** Some jobs, and how many more of their sort are not shown. */
  record Group(List<NextJob> jobs, int more) {

    public boolean none() {
      return jobs.isEmpty();
    }
  }

  static BenchPage of(List<NextJob> ranked, int show) {
    int shown = Math.max(1, Math.min(show, MOST));
    return new BenchPage(
        group(ranked, Standing.TO_DO, shown),
        group(ranked, Standing.PASSED_ON, shown),
        group(ranked, Standing.WAITING, shown),
        group(ranked, Standing.NOT_READY, shown),
        Math.min(MOST, shown * 4));
  }

  /** The build has no part that is not accepted. */
  public boolean isDone() {
    return toDo.none() && passedOn.none() && waiting.none() && notReady.none();
  }

  private static Group group(List<NextJob> ranked, Standing standing, int shown) {
    List<NextJob> jobs = ranked.stream().filter(job -> job.standing() == standing).toList();
    return new Group(jobs.stream().limit(shown).toList(), Math.max(0, jobs.size() - shown));
  }
}
