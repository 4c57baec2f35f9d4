package dev.flangewright.heat;

import dev.flangewright.materials.FormingWindow;
import dev.flangewright.materials.MaterialLibrary;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads how long pieces stay soft. */
@Service
@Transactional(readOnly = true)
public class FormingWindows {

  private final Quenches quenches;
  private final MaterialLibrary library;

  FormingWindows(Quenches quenches, MaterialLibrary library) {
    this.quenches = quenches;
    this.library = library;
  }

  /** By the id of the piece, for every piece of a build that was quenched; in one statement. */
  public Map<Long, OpenWindow> ofBuild(long buildId, Instant now) {
    return quenches.lastOfEachPiece(buildId).stream()
        .collect(Collectors.toMap(Quench::pieceId, quench -> open(quench, now)));
  }

  /** As it is, or was, at an instant; empty if no quench of the piece stands. */
  public Optional<PieceWindow> ofPiece(long pieceId, Instant at) {
    return quenches
        .findFirstByPieceIdAndTakenBackFalseOrderByQuenchedAtDesc(pieceId)
        .map(quench -> window(quench, at));
  }

  /** What was told, also what was taken back since; in any order. */
  public List<HeatEvent> eventsOf(long pieceId) {
    return quenches.findByPieceIdOrderByQuenchedAt(pieceId).stream()
        .flatMap(quench -> HeatEvents.of(quench, figures(quench.alloy())))
        .toList();
  }

  /** What the shipped table says of an alloy; all of it empty where no row names it. */
  FormingWindow figures(String alloy) {
    return library
        .formingWindow(alloy)
        .orElseGet(() -> new FormingWindow(alloy, null, null, null, List.of(), List.of()));
  }

  private OpenWindow open(Quench quench, Instant now) {
    Countdown countdown = quench.countdown(figures(quench.alloy()), now);
    LateForming late = quench.late();
    return new OpenWindow(
        quench.alloy(),
        countdown.state(),
        countdown.closesAt(),
        late != null,
        CountdownWords.inList(countdown, now));
  }

  private PieceWindow window(Quench quench, Instant at) {
    FormingWindow figures = figures(quench.alloy());
    LateForming late = quench.late();
    return new PieceWindow(
        quench.alloy(),
        quench.quenchedAt(),
        quench.told(),
        quench.stays().stream().map(ColdStay::stay).toList(),
        late == null ? null : late.told(),
        figures,
        quench.countdown(figures, at));
  }
}
