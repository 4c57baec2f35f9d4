package dev.flangewright.heat;

import dev.flangewright.materials.FormingWindow;
import dev.flangewright.people.LogTime;
import dev.flangewright.people.Refused;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Version;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A quench of a piece and what became of the softness that it gave. */
@Entity
class Quench {

  static final Duration LONGEST_BACK = Duration.ofHours(24);

  /** By how much clocks may differ. */
  static final Duration SKEW = Duration.ofMinutes(5);

  private static final double COLDEST_C = -100;
  private static final double WARMEST_C = 20;

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private long pieceId;

  @SuppressWarnings("UnusedVariable") // lists find it by its build
  private long buildId;

  private String alloy;
  private Instant quenchedAt;
  private String toldBy;
  private Instant toldAt;
  private Instant receivedAt;
  private String note;
  private int logLine;
  private boolean takenBack;
  @Embedded private @Nullable LateForming late;

  @OneToMany(mappedBy = "quench", cascade = CascadeType.ALL)
  @OrderBy("inAt")
  private List<ColdStay> stays = new ArrayList<>();

  protected Quench() {}

  /**
   * @param quenchedAt at most 24 hours before it is told, and not later
   * @param logLine how long the log of the piece was when it was told
   * @throws Refused if it is otherwise
   */
  Quench(QuenchedPiece piece, Instant quenchedAt, Told by, int logLine) {
    if (quenchedAt.isAfter(by.at().plus(SKEW))) {
      throw Refused.unacceptable("The time of the quench lies in the future.");
    }
    if (quenchedAt.isBefore(by.at().minus(LONGEST_BACK))) {
      throw Refused.unacceptable(
          "The time of the quench lies more than 24 hours back. Nothing is soft so long; have it"
              + " solution treated again, or leave the time as it is and note when it was.");
    }
    this.pieceId = piece.pieceId();
    this.buildId = piece.buildId();
    this.alloy = piece.alloy();
    this.quenchedAt = quenchedAt.isAfter(by.at()) ? by.at() : quenchedAt;
    this.toldBy = by.who();
    this.toldAt = by.at();
    this.receivedAt = by.receivedAt();
    this.note = by.note();
    this.logLine = logLine;
  }

  /**
   * Puts the piece into the freezer.
   *
   * @param celsius of the freezer, −100 to 20
   * @throws Refused if it is in already, or its window has closed
   */
  void intoFreezer(double celsius, FormingWindow figures, Told by) {
    if (!(celsius >= COLDEST_C && celsius <= WARMEST_C)) {
      throw Refused.unacceptable(
          "celsius is %s; it must be from −100 to 20, as the freezer shows it."
              .formatted(String.valueOf(celsius).replace('-', '−')));
    }
    if (inFreezer().isPresent()) {
      throw Refused.conflict("It is in the freezer already.");
    }
    refuseIfBeforeLast(by);
    Countdown now = countdown(figures, by.at());
    if (now.state() == WindowState.PAST) {
      throw Refused.conflict(
          "Its forming window is past: cold does not make it soft again. It can only be solution"
              + " treated and quenched anew.");
    }
    stays.add(new ColdStay(this, celsius, by));
  }

  /**
   * @throws Refused if it is not in the freezer
   */
  void outOfFreezer(Told by) {
    ColdStay stay = inFreezer().orElseThrow(() -> Refused.conflict("It is not in the freezer."));
    refuseIfBeforeLast(by);
    stay.ends(by);
  }

  /**
   * Lets it be formed although its window is past; the note says why.
   *
   * @throws Refused if the window is not past, it is let already, or the reason is missing
   */
  void letBeFormedLate(FormingWindow figures, Told by) {
    if (by.note().isEmpty()) {
      throw Refused.unacceptable("reason is missing: say why it may be formed past its window.");
    }
    if (late != null) {
      throw Refused.conflict(
          "It may be formed past its window already: %s.".formatted(late.said()));
    }
    if (countdown(figures, by.at()).state() != WindowState.PAST) {
      throw Refused.conflict("Its forming window is not past; nothing has to be let.");
    }
    late = new LateForming(by);
  }

  /** An entry of the piece's log was taken back, and with it a quench that rests on it. */
  void isTakenBackWith(int line) {
    takenBack = logLine >= line;
  }

  /**
   * @throws Refused unless the other quench was later
   */
  void refuseUnlessBefore(Instant next) {
    if (!quenchedAt.isBefore(next)) {
      throw Refused.conflict(
          "It was quenched at %s before; the new quench must be later."
              .formatted(LogTime.of(quenchedAt, toldAt)));
    }
  }

  private void refuseIfBeforeLast(Told by) {
    Instant last = stays.stream().map(Quench::lastOf).reduce(quenchedAt, (one, next) -> next);
    if (by.at().isBefore(last)) {
      throw Refused.conflict(
          "The entry is said to have been done before the last one on this quench, at %s."
              .formatted(LogTime.of(last, by.receivedAt())));
    }
  }

  private static Instant lastOf(ColdStay stay) {
    Told out = stay.out();
    return out == null ? stay.in().at() : out.at();
  }

  private Optional<ColdStay> inFreezer() {
    return stays.stream().filter(stay -> !stay.isOver()).findFirst();
  }

  Countdown countdown(FormingWindow figures, Instant at) {
    return Countdown.at(at, quenchedAt, stays.stream().map(ColdStay::stay).toList(), figures);
  }

  long pieceId() {
    return pieceId;
  }

  String alloy() {
    return alloy;
  }

  Instant quenchedAt() {
    return quenchedAt;
  }

  Told told() {
    return new Told(toldBy, toldAt, note, receivedAt);
  }

  boolean takenBack() {
    return takenBack;
  }

  @Nullable LateForming late() {
    return late;
  }

  List<ColdStay> stays() {
    return Collections.unmodifiableList(stays);
  }
}
