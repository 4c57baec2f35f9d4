package dev.flangewright.bench.web;

import dev.flangewright.bench.NextJob;
import dev.flangewright.bench.NextJob.Kind;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The bench's list in three groups: what the reader can do, what waits for somebody else, and what
 * cannot be begun. Each shows its first few and says how many more there are.
 *
 * @param showMore how many to show if the reader asks for more
 */
record BenchPage(Group toDo, Group waiting, Group notReady, int showMore) {

  private static final int MOST = 500;

  /** Some jobs, and how many more of their sort are not shown. */
  record Group(List<NextJob> jobs, int more) {

    boolean none() {
      return jobs.isEmpty();
    }
  }

  static BenchPage of(List<NextJob> ranked, int show) {
    int shown = Math.max(1, Math.min(show, MOST));
    return new BenchPage(
        group(ranked, EnumSet.of(Kind.CHECK, Kind.INSPECT, Kind.CARRY_ON, Kind.BEGIN), shown),
        group(ranked, EnumSet.of(Kind.WAIT), shown),
        group(ranked, EnumSet.of(Kind.NOT_READY), shown),
        Math.min(MOST, shown * 4));
  }

  private static Group group(List<NextJob> ranked, Set<Kind> kinds, int shown) {
    List<NextJob> jobs = ranked.stream().filter(job -> kinds.contains(job.kind())).toList();
    return new Group(jobs.stream().limit(shown).toList(), Math.max(0, jobs.size() - shown));
  }
}
