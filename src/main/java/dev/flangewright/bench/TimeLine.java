package dev.flangewright.bench;

import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Everything that happened to a piece, told by all modules. */
@Component
public class TimeLine {

  private final List<PieceEvents> tellers;

  TimeLine(List<PieceEvents> tellers) {
    this.tellers = tellers;
  }

  /** Oldest first; of one moment, in the order in which the tellers tell it. */
  @Transactional(readOnly = true)
  public List<PieceEvent> of(long pieceId) {
    return tellers.stream()
        .flatMap(teller -> teller.of(pieceId).stream())
        .sorted(Comparator.comparing(PieceEvent::at))
        .toList();
  }
}
