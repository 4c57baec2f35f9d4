package dev.flangewright.bench;

import dev.flangewright.forming.EdgeError;
import dev.flangewright.forming.FormingModel;
import dev.flangewright.parts.GaugeEntry;
import dev.flangewright.parts.GaugeReading;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/**
 * A gauge reading taken on a piece: what was written, and what the calculation of that day told
 * from it. Readings are added and never changed.
 */
@Entity
@Table(name = "gauge_reading")
public class GaugeLog {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "gauge_reading_seq")
  @SequenceGenerator(name = "gauge_reading_seq", sequenceName = "gauge_reading_seq")
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private Piece piece;

  private @Nullable String stageCode;
  @Embedded private GaugeNote written;
  private String answer;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private EdgeError edgeError;

  private double strain;
  private double millimetres;
  private int passes;
  private int firstStation;
  private int lastStation;
  private int modelVersion;
  private String who;
  private Instant readAt;

  protected GaugeLog() {}

  GaugeLog(Piece piece, GaugeEntry written, GaugeReading told, Signature by) {
    this.piece = piece;
    this.stageCode = piece.current().map(PieceStage::code).orElse(null);
    this.written = new GaugeNote(written);
    this.answer = told.sentence();
    this.edgeError = told.left().error();
    this.strain = told.left().rest().strain();
    this.millimetres = told.left().rest().millimetres();
    this.passes = told.left().passes();
    this.firstStation = told.first().number();
    this.lastStation = told.last().number();
    this.modelVersion = FormingModel.VERSION;
    this.who = by.who();
    this.readAt = by.at();
  }

  /** The identity; set once it is stored. */
  public Long id() {
    return Objects.requireNonNull(id);
  }

  public Piece piece() {
    return piece;
  }

  /** The stage the piece stood at; null when none was open. */
  public @Nullable String stageCode() {
    return stageCode;
  }

  /** The natural strain that was left, its magnitude. */
  public double strain() {
    return strain;
  }

  public int firstStation() {
    return firstStation;
  }

  public int lastStation() {
    return lastStation;
  }

  /** Of the calculation that told it. */
  public int modelVersion() {
    return modelVersion;
  }

  public GaugeEntry written() {
    return written.written();
  }

  /** The sentence that the bench was given. */
  public String answer() {
    return answer;
  }

  public EdgeError edgeError() {
    return edgeError;
  }

  /** Still to take out or put in, mm, by the calculation of that day. */
  public double millimetres() {
    return millimetres;
  }

  public int passes() {
    return passes;
  }

  public String who() {
    return who;
  }

  public Instant readAt() {
    return readAt;
  }
}
