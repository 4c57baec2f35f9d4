package dev.flangewright.heat;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One time in the freezer, as it was told. */
@Entity
class ColdStay {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  @SuppressWarnings("UnusedVariable") // the owning side: its column is what is read
  private Quench quench;

  private double celsius;
  private Instant inAt;
  private String inBy;
  private Instant inReceivedAt;
  private String inNote;
  private @Nullable Instant outAt;
  private @Nullable String outBy;
  private @Nullable Instant outReceivedAt;
  private @Nullable String outNote;

  protected ColdStay() {}

  ColdStay(Quench quench, double celsius, Told by) {
    this.quench = quench;
    this.celsius = celsius;
    this.inAt = by.at();
    this.inBy = by.who();
    this.inReceivedAt = by.receivedAt();
    this.inNote = by.note();
  }

  void ends(Told by) {
    this.outAt = by.at();
    this.outBy = by.who();
    this.outReceivedAt = by.receivedAt();
    this.outNote = by.note();
  }

  boolean isOver() {
    return outAt != null;
  }

  Stay stay() {
    return new Stay(inAt, outAt, celsius);
  }

  Told in() {
    return new Told(inBy, inAt, inNote, inReceivedAt);
  }

  /** Null while it is inside. */
  @Nullable Told out() {
    return outAt == null
        ? null
        : new Told(
            Objects.requireNonNull(outBy),
            outAt,
            Objects.requireNonNull(outNote),
            Objects.requireNonNull(outReceivedAt));
  }
}
