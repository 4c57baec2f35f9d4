package dev.flangewright.parts;

import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FlangeKind;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** An edge of a part turned over the block, with the contour it follows. */
@Entity
public class Flange {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private Part part;

  private String name;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private FlangeKind kind;

  private Written finishedWidthMm;
  private Written workingWidthMm;
  private @Nullable Written fitToleranceMm;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private EdgeCondition edgeCondition;

  private int registerOrder;
  private int contourOrder;
  private WrittenStations stations;
  private WrittenCutouts cutouts = WrittenCutouts.NONE;

  @Embedded private FlangeSummary summary = new FlangeSummary();

  protected Flange() {}

  Flange(Part part, String name, FlangeDrawing drawn, int registerOrder) {
    this.part = part;
    this.name = name;
    this.registerOrder = registerOrder;
    this.contourOrder = registerOrder;
    this.edgeCondition = EdgeCondition.POLISHED;
    this.stations = WrittenStations.NONE;
    draw(drawn);
  }

  public void isDrawn(FlangeDrawing drawn) {
    draw(drawn);
  }

  private void draw(FlangeDrawing drawn) {
    this.kind = drawn.kind();
    this.finishedWidthMm = drawn.finishedWidthMm();
    this.workingWidthMm = drawn.workingWidthMm();
    this.fitToleranceMm = drawn.fitToleranceMm();
  }

  public FlangeDrawing drawn() {
    return new FlangeDrawing(kind, finishedWidthMm, workingWidthMm, fitToleranceMm);
  }

  /** Lays the contour down; {@code order} is its place in the contour file. */
  public void follows(WrittenStations newStations, int order) {
    this.stations = newStations;
    this.contourOrder = order;
  }

  public void edgeIs(EdgeCondition condition) {
    this.edgeCondition = condition;
  }

  /** What is cut out of it; in place of what was. */
  public void isCutOut(WrittenCutouts newCutouts) {
    this.cutouts = newCutouts;
  }

  public WrittenCutouts cutouts() {
    return cutouts;
  }

  public FlangeSummary summary() {
    return summary;
  }

  /** The identity; set once the flange is stored. */
  public Long id() {
    return Objects.requireNonNull(id);
  }

  @Nullable Long storedId() {
    return id;
  }

  public long version() {
    return version;
  }

  public Part part() {
    return part;
  }

  public String name() {
    return name;
  }

  public EdgeCondition edgeCondition() {
    return edgeCondition;
  }

  public int registerOrder() {
    return registerOrder;
  }

  public int contourOrder() {
    return contourOrder;
  }

  public WrittenStations stations() {
    return stations;
  }
}
