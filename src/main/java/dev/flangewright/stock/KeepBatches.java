package dev.flangewright.stock;

import dev.flangewright.parts.Build;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.DrawingRefused;
import dev.flangewright.parts.Faults;
import dev.flangewright.people.MayKeepStock;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Records deliveries of sheet, and what is known of them. */
@Service
public class KeepBatches {

  private final Builds builds;
  private final Batches batches;
  private final CheckBatch check;
  private final Clock clock;

  KeepBatches(Builds builds, Batches batches, CheckBatch check, Clock clock) {
    this.builds = builds;
    this.batches = batches;
    this.check = check;
    this.clock = clock;
  }

  /**
   * @throws DrawingRefused if something written cannot be taken
   * @throws Refused if the build has a batch of that mark already, in capitals or small letters
   */
  @MayKeepStock
  @Transactional
  public Batch record(long buildId, BatchEntry written) {
    Build build = builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId));
    Faults faults = new Faults();
    String mark = faults.text("mark", written.mark(), 40);
    BatchFacts facts = facts(written, faults);
    if (batches.existsByBuildIdAndMarkIgnoreCase(buildId, mark)) {
      throw Refused.conflict("There is already a batch \"" + mark + "\" in this build.");
    }
    return batches.saveAndFlush(new Batch(build, mark, facts, by("recorded")));
  }

  /**
   * The batch keeps its mark, by which pieces and people name it.
   *
   * @throws DrawingRefused if something written cannot be taken
   * @throws Refused if somebody else changed it since {@code version} was read, or it is released
   *     and its metal or its papers would change
   */
  @MayKeepStock
  @Transactional
  public Batch change(long id, long version, BatchEntry written) {
    Batch batch = batches.findWholeById(id).orElseThrow(() -> Refused.unknown("batch", id));
    batch.refuseIfStale(version);
    batch.is(facts(written, new Faults()), by(""));
    return batch;
  }

  private BatchFacts facts(BatchEntry written, Faults faults) {
    BatchFacts facts =
        check.facts(written, LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()), faults);
    faults.refuseIfAny();
    return facts;
  }

  private Signed by(String words) {
    return new Signed(SignedIn.name(), clock.instant(), words);
  }
}
