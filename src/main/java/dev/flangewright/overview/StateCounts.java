package dev.flangewright.overview;

import dev.flangewright.parts.PartState;
import java.util.Collection;
import java.util.stream.Stream;

/** How many parts are in each state. */
public record StateCounts(int notBegun, int inWork, int held, int accepted, int concession) {

  public static StateCounts of(Collection<PartState> states) {
    return new StateCounts(
        count(states, PartState.NOT_BEGUN),
        count(states, PartState.IN_WORK),
        count(states, PartState.HELD),
        count(states, PartState.ACCEPTED),
        count(states, PartState.CONCESSION));
  }

  private static int count(Collection<PartState> states, PartState wanted) {
    return (int) states.stream().filter(state -> state == wanted).count();
  }

  public int total() {
    return Stream.of(notBegun, inWork, held, accepted, concession).mapToInt(n -> n).sum();
  }

  /** Accepted, with or without a concession. */
  public int done() {
    return accepted + concession;
  }
}
