package dev.flangewright.stock;

import dev.flangewright.parts.Build;
import dev.flangewright.parts.Written;
import dev.flangewright.people.Refused;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/**
 * A delivery of sheet of one metal, one thickness and one certificate. Pieces name it by its mark,
 * which never changes; a batch is never taken away, so that every piece finds its certificate.
 */
@Entity
public class Batch {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private Build build;

  private String mark;
  private String alloy;
  private String temper;
  private String thickness;
  private double thicknessMm;
  private String heatNumber;
  private String certificate;
  private String supplier;
  private @Nullable String sheetWidthMm;
  private @Nullable String sheetLengthMm;
  private @Nullable Integer sheets;
  private LocalDate receivedOn;
  private String place;
  private String note;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private BatchCondition condition;

  @OneToMany(mappedBy = "batch", cascade = CascadeType.ALL)
  @OrderBy("ordinal")
  private List<BatchChange> changes = new ArrayList<>();

  protected Batch() {}

  /** A delivery whose certificate nobody has checked yet. */
  Batch(Build build, String mark, BatchFacts facts, Signed by) {
    this.build = build;
    this.mark = mark;
    this.condition = BatchCondition.RECEIVED;
    describe(facts);
    log(by);
  }

  /**
   * Takes over what is known of it.
   *
   * @throws Refused if its metal or its papers would change under a release that vouches for them
   */
  void is(BatchFacts facts, Signed by) {
    String changed = facts.changedFrom(facts());
    if (changed.isEmpty()) {
      return;
    }
    if (isVouchedFor() && !facts.hasPapersOf(facts())) {
      throw Refused.conflict(
          "%s %s on this certificate. Hold it back before its metal or its papers are changed."
              .formatted(mark, condition.sentence()));
    }
    describe(facts);
    log(new Signed(by.who(), by.at(), "changed " + changed));
  }

  private boolean isVouchedFor() {
    return condition == BatchCondition.RELEASED || condition == BatchCondition.USED_UP;
  }

  private void describe(BatchFacts facts) {
    this.alloy = facts.metal().alloy();
    this.temper = facts.metal().temper();
    this.thicknessMm = facts.metal().thicknessMm();
    this.thickness = facts.thickness();
    this.heatNumber = facts.heatNumber();
    this.certificate = facts.certificate();
    this.supplier = facts.supplier();
    this.sheetWidthMm = text(facts.sheetWidthMm());
    this.sheetLengthMm = text(facts.sheetLengthMm());
    this.sheets = facts.sheets();
    this.receivedOn = facts.receivedOn();
    this.place = facts.place();
    this.note = facts.note();
  }

  /** Somebody checked the certificate against the sheet: metal may be cut from it. */
  public void release(Signed by) {
    happens(BatchAction.RELEASE, by);
  }

  /** Nothing more is cut from it until somebody takes it back. */
  public void holdBack(Signed by) {
    happens(BatchAction.HOLD_BACK, by);
  }

  /** What was held back, or thought to be used up, may be cut after all. */
  public void takeBack(Signed by) {
    happens(BatchAction.TAKE_BACK, by);
  }

  public void useUp(Signed by) {
    happens(BatchAction.USE_UP, by);
  }

  /**
   * @throws Refused if its condition does not allow the action, it lacks the certificate, or the
   *     words that it needs are missing
   */
  public void happens(BatchAction action, Signed by) {
    BatchCondition then = action.of(condition, mark, by);
    if (action.frees() && certificate.isEmpty()) {
      throw Refused.conflict(
          "%s cannot be released without the number of its certificate. Whoever keeps the stock"
                  .formatted(mark)
              + " enters it.");
    }
    this.condition = then;
    log(by);
  }

  private void log(Signed by) {
    changes.add(new BatchChange(this, changes.size() + 1, condition, by));
  }

  /**
   * @param seen the version that a person looked at; null to go without the comparison
   * @throws Refused if somebody else changed the batch since
   */
  public void refuseIfStale(@Nullable Long seen) {
    if (seen != null && seen != version) {
      throw Refused.conflict(
          "Somebody changed this batch in the meantime: %s %s. Nothing was stored; look at it again."
              .formatted(mark, condition.sentence()));
    }
  }

  /** {@code "B-12 (cast 4711)"}. */
  public String name() {
    return named(mark, heatNumber);
  }

  static String named(String mark, String heatNumber) {
    return heatNumber.isEmpty() ? mark : mark + " (cast " + heatNumber + ")";
  }

  public BatchFacts facts() {
    return new BatchFacts(
        new SheetMetal(alloy, temper, thicknessMm),
        thickness,
        heatNumber,
        certificate,
        supplier,
        written(sheetWidthMm),
        written(sheetLengthMm),
        sheets,
        receivedOn,
        place,
        note);
  }

  private static @Nullable String text(@Nullable Written number) {
    return number == null ? null : number.text();
  }

  private static @Nullable Written written(@Nullable String text) {
    return text == null ? null : new Written(text);
  }

  /** As lists read it. */
  public BatchLine line() {
    return new BatchLine(id(), mark, alloy, temper, thicknessMm, heatNumber, condition);
  }

  /** The identity; set once the batch is stored. */
  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long version() {
    return version;
  }

  public Build build() {
    return build;
  }

  /** Its own mark, as painted on the sheet; no other batch of the build has it. */
  public String mark() {
    return mark;
  }

  public BatchCondition condition() {
    return condition;
  }

  /** Its log, oldest first. */
  public List<BatchChange> changes() {
    return Collections.unmodifiableList(changes);
  }
}
