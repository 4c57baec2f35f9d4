package dev.flangewright.phones;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.phones.Sending.Outcome;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;

/**
 * A piece on which one entry after the other is logged, each by whichever phones get hold of it.
 */
final class PieceAtWork {

  private static final int RIVAL_ONE_IN = 4;
  private static final int LOST_ONE_IN = 5;
  private static final int LONGEST_PATIENCE_MS = 20;

  private final long id;
  private final List<Script.Step> script;
  private final Random chance;
  private final List<String> taken = new ArrayList<>();

  PieceAtWork(long id, List<Script.Step> script, Random chance) {
    this.id = id;
    this.script = script;
    this.chance = chance;
  }

  long id() {
    return id;
  }

  /** The lines that were acknowledged, in their order. */
  List<String> taken() {
    return taken;
  }

  boolean isDone() {
    return taken.size() == script.size();
  }

  /** Logs the next entry; somebody else's phone may try the same at the same moment. */
  void next(Phone phone, Phone other) throws InterruptedException, ExecutionException {
    boolean contested = chance.nextInt(RIVAL_ONE_IN) == 0;
    // only one of two entries that saw the same piece can be taken
    int seen = contested ? taken.size() : -1;
    Sending mine = sending(phone, seen);
    if (chance.nextInt(LOST_ONE_IN) == 0) {
      mine.andHangUp(chance.nextInt(LONGEST_PATIENCE_MS));
    }
    if (contested) {
      against(mine, sending(other, seen));
    } else {
      assertThat(settled(mine)).as(mine.line()).isEqualTo(Outcome.TAKEN);
      taken.add(mine.line());
    }
  }

  private Sending sending(Phone phone, int seen) {
    return Sending.of(phone, "/pieces/" + id, script.get(taken.size()), seen, chance);
  }

  private void against(Sending mine, Sending theirs) {
    CompletableFuture<HttpResponse<String>> rival = theirs.once();
    Outcome ours = settled(mine);
    Outcome others = theirs.settled(rival);
    assertThat(Set.of(ours, others)).as(mine.line() + " or " + theirs.line()).hasSize(2);
    taken.add(ours == Outcome.TAKEN ? mine.line() : theirs.line());
  }

  /** Sends the entry once, twice or three times, at once or one after the other. */
  private Outcome settled(Sending entry) {
    int copies = 1 + Math.max(0, chance.nextInt(5) - 2);
    boolean together = chance.nextBoolean();
    List<CompletableFuture<HttpResponse<String>>> sent = new ArrayList<>();
    for (int copy = 0; copy < copies; copy++) {
      sent.add(entry.once());
      if (!together) {
        sent.get(copy).join();
      }
    }
    Set<Outcome> outcomes = EnumSet.noneOf(Outcome.class);
    sent.forEach(answer -> outcomes.add(entry.settled(answer)));
    assertThat(outcomes).as(entry.line()).hasSize(1);
    return outcomes.iterator().next();
  }
}
