package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A check as one piece goes through it: a copy of the route's check, with its answer. The answer
 * that holds stands here; those before it, and those from before a rework, stand in the log.
 */
@Entity
public class PieceCheck {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  @SuppressWarnings("UnusedVariable") // the owning side: its column is what is read
  private PieceStage stage;

  private int seq;
  private String code;
  @Embedded private CheckCard card;
  private @Nullable Boolean answeredYes;
  private @Nullable Double answeredNumber;
  private @Nullable Long answeredPhoto;
  private @Nullable Instant answeredAt;
  private @Nullable String answeredBy;
  private @Nullable Instant passedAt;
  private @Nullable String passedBy;

  protected PieceCheck() {}

  PieceCheck(PieceStage stage, StageCheck planned) {
    this.stage = stage;
    this.seq = planned.seq();
    this.code = planned.code();
    this.card = planned.card();
  }

  /**
   * @throws Refused if it is of another kind than was asked for
   */
  void answer(Answer answer, Signature by) {
    if (card.kind() != CheckKind.of(answer)) {
      throw Refused.unacceptable(
          "answer to \"%s\" has to be %s.".formatted(card.question(), card.kind().words()));
    }
    forget();
    answeredPhoto = answer.photo();
    answeredYes = answer.yes();
    answeredNumber = answer.number();
    answeredAt = by.at();
    answeredBy = by.who();
  }

  void letPass(Signature by) {
    passedAt = by.at();
    passedBy = by.who();
  }

  void takeBackPass() {
    passedAt = null;
    passedBy = null;
  }

  /** Back to not answered; the log keeps what had been answered. */
  void forget() {
    takeBackPass();
    answeredYes = null;
    answeredNumber = null;
    answeredPhoto = null;
    answeredAt = null;
    answeredBy = null;
  }

  /** The answer that holds; null until there is one. */
  public @Nullable Answer answer() {
    return answeredAt == null ? null : new Answer(answeredYes, answeredNumber, answeredPhoto);
  }

  public boolean isAnswered() {
    return answeredAt != null;
  }

  /** Answered with no, or with a number out of tolerance. */
  public boolean isFailed() {
    Answer answer = answer();
    return answer != null && !card.isMetBy(answer);
  }

  /** Failed, and nobody who may release holds has let it pass. */
  public boolean stopsTheStage() {
    return isFailed() && passedAt == null;
  }

  /** Question, answer and, if it was not met, what was wanted. */
  public String said() {
    Answer answer = answer();
    String answered = answer == null ? "" : ": " + answer.inWords(card.unit());
    return card.question() + answered + (isFailed() ? " (wanted: " + card.wanted() + ")" : "");
  }

  public int seq() {
    return seq;
  }

  public String code() {
    return code;
  }

  public CheckCard card() {
    return card;
  }

  public @Nullable Instant answeredAt() {
    return answeredAt;
  }

  public @Nullable String answeredBy() {
    return answeredBy;
  }

  public @Nullable Instant passedAt() {
    return passedAt;
  }

  public @Nullable String passedBy() {
    return passedBy;
  }
}
