package dev.flangewright.parts;

import jakarta.persistence.CascadeType;
import jakarta.persistence.Embedded;
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
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** A segment as drawn. Its pieces, the physical attempts at it, belong to the bench. */
@Entity
public class Part {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private Build build;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private Frame frame;

  private String partNumber;
  private String segment;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private Hand hand;

  private String drawing;
  private String drawingIssue;
  private String alloy;
  private String temper;
  private String thickness;
  private Written insideBendRadiusMm;
  private String blockSet;
  private Written trimAllowanceMm = new Written("0");
  private WrittenHoles holes = WrittenHoles.NONE;

  @OneToMany(mappedBy = "part", cascade = CascadeType.ALL, orphanRemoval = true)
  @OrderBy("registerOrder")
  private List<Flange> flanges = new ArrayList<>();

  @Embedded private PartSummary summary = new PartSummary();

  protected Part() {}

  public Part(Frame frame, String partNumber, PartDrawing drawn) {
    this.build = frame.build();
    this.partNumber = partNumber;
    draw(frame, drawn);
  }

  /** Takes over what a drawing issue says. The figures are stale until they are summed up anew. */
  public void isDrawn(Frame on, PartDrawing drawn) {
    draw(on, drawn);
  }

  private void draw(Frame on, PartDrawing drawn) {
    this.frame = on;
    this.segment = drawn.segment();
    this.hand = drawn.hand();
    this.drawing = drawn.drawing();
    this.drawingIssue = drawn.drawingIssue();
    this.alloy = drawn.alloy();
    this.temper = drawn.temper();
    this.thickness = drawn.thickness();
    this.insideBendRadiusMm = drawn.insideBendRadiusMm();
    this.blockSet = drawn.blockSet();
  }

  public PartDrawing drawn() {
    return new PartDrawing(
        segment,
        hand,
        drawing,
        drawingIssue,
        alloy,
        temper,
        thickness,
        insideBendRadiusMm,
        blockSet);
  }

  /** What is left round the blank before forming, and the holes in the web. */
  public void isLaidOut(Written allowanceMm, WrittenHoles newHoles) {
    this.trimAllowanceMm = allowanceMm;
    this.holes = newHoles;
  }

  /** Metal left outside the developed outline when the blank is cut, mm. */
  public Written trimAllowanceMm() {
    return trimAllowanceMm;
  }

  public WrittenHoles holes() {
    return holes;
  }

  public Flange addFlange(String name, FlangeDrawing drawn, int registerOrder) {
    Flange flange = new Flange(this, name, drawn, registerOrder);
    flanges.add(flange);
    return flange;
  }

  public void removeFlange(Flange flange) {
    flanges.remove(flange);
  }

  public Optional<Flange> flange(String name) {
    return flanges.stream().filter(f -> f.name().equals(name)).findFirst();
  }

  public List<Flange> flanges() {
    return Collections.unmodifiableList(flanges);
  }

  /** The stored extract of the forming figures, for lists. */
  public PartSummary summary() {
    return summary;
  }

  /** The identity; set once the part is stored. */
  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long version() {
    return version;
  }

  public Build build() {
    return build;
  }

  public Frame frame() {
    return frame;
  }

  public String partNumber() {
    return partNumber;
  }
}
