package dev.flangewright.bench;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A check that a route asks for at a stage. */
@Entity
public class StageCheck {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  @SuppressWarnings("UnusedVariable") // the owning side: its column is what is read
  private RouteStage stage;

  private int seq;
  private String code;
  @Embedded private CheckCard card;

  protected StageCheck() {}

  StageCheck(RouteStage stage, int seq, String code, CheckCard card) {
    this.stage = stage;
    this.seq = seq;
    this.code = code;
    this.card = card;
  }

  void reads(CheckCard newCard) {
    this.card = newCard;
  }

  void standsAt(int newSeq) {
    this.seq = newSeq;
  }

  public Long id() {
    return Objects.requireNonNull(id);
  }

  boolean hasId(long wanted) {
    return id != null && id == wanted;
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
}
