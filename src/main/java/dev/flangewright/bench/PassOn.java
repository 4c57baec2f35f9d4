package dev.flangewright.bench;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * That somebody would rather not do the next job of a part today, and why. It holds until the
 * person takes it back, somebody logs on the piece, or the day ends.
 */
@Entity
@SuppressWarnings("UnusedVariable") // its columns are what is read, by BenchLines
class PassOn {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  private long buildId;
  private long partId;
  private int pieceNumber;
  private @Nullable Integer logLines;
  private String who;
  private String reason;
  private Instant passedAt;

  protected PassOn() {}

  PassOn(long buildId, long partId, Attempt on, Signature by) {
    this.buildId = buildId;
    this.partId = partId;
    this.who = by.who();
    meant(on, by);
  }

  /** The same person passes on it again: the newest word counts. */
  final void meant(Attempt on, Signature by) {
    this.pieceNumber = on.pieceNumber();
    this.logLines = on.logLines();
    this.reason = Texts.of("reason", by.note(), 1, 200);
    this.passedAt = by.at();
  }

  /**
   * The job that was passed on.
   *
   * @param pieceNumber of the piece in work, or of the one to be begun
   * @param logLines how many lines the log of the piece in work had; null if it was to be begun
   */
  record Attempt(int pieceNumber, @Nullable Integer logLines) {}
}
