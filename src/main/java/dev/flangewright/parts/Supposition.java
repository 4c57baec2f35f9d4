package dev.flangewright.parts;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a part might be made otherwise than it is drawn, as somebody wrote it. An empty text leaves
 * the drawing's own; a flange that is not named stays as it is drawn.
 */
public record Supposition(
    String alloy,
    String temper,
    String thicknessMm,
    String insideBendRadiusMm,
    List<OfFlange> flanges) {

  /** A field that was not sent at all counts as empty. */
  public Supposition {
    alloy = Objects.requireNonNullElse(alloy, "");
    temper = Objects.requireNonNullElse(temper, "");
    thicknessMm = Objects.requireNonNullElse(thicknessMm, "");
    insideBendRadiusMm = Objects.requireNonNullElse(insideBendRadiusMm, "");
    flanges = flanges == null ? List.of() : List.copyOf(flanges);
  }

  /**
   * One flange otherwise.
   *
   * @param turnDeg degrees that every station is bent further; negative for less
   * @param edgeCondition the name of an {@link dev.flangewright.forming.EdgeCondition}
   */
  public record OfFlange(
      String name,
      String finishedWidthMm,
      String workingWidthMm,
      String turnDeg,
      String edgeCondition) {

    /** A field that was not sent at all counts as empty. */
    public OfFlange {
      name = Objects.requireNonNullElse(name, "");
      finishedWidthMm = Objects.requireNonNullElse(finishedWidthMm, "");
      workingWidthMm = Objects.requireNonNullElse(workingWidthMm, "");
      turnDeg = Objects.requireNonNullElse(turnDeg, "");
      edgeCondition = Objects.requireNonNullElse(edgeCondition, "");
    }
  }

  /** The part as it is drawn, written out. */
  public static Supposition of(Part part) {
    PartDrawing drawn = part.drawn();
    return new Supposition(
        drawn.alloy(),
        drawn.temper(),
        drawn.thickness(),
        drawn.insideBendRadiusMm().text(),
        part.flanges().stream().map(Supposition::of).toList());
  }

  private static OfFlange of(Flange flange) {
    return new OfFlange(
        flange.name(),
        flange.drawn().finishedWidthMm().text(),
        flange.drawn().workingWidthMm().text(),
        "0",
        flange.edgeCondition().name());
  }

  /**
   * This supposition with the drawing's own where it says nothing: first the part's flanges in
   * their order, then any that the part does not have.
   */
  public Supposition over(Supposition drawn) {
    Stream<OfFlange> known = drawn.flanges.stream().map(this::over);
    Stream<OfFlange> strange =
        flanges.stream().filter(flange -> named(drawn.flanges, flange.name()).isEmpty());
    return new Supposition(
        or(alloy, drawn.alloy),
        or(temper, drawn.temper),
        or(thicknessMm, drawn.thicknessMm),
        or(insideBendRadiusMm, drawn.insideBendRadiusMm),
        Stream.concat(known, strange).toList());
  }

  private OfFlange over(OfFlange drawn) {
    return named(flanges, drawn.name())
        .map(
            other ->
                new OfFlange(
                    drawn.name(),
                    or(other.finishedWidthMm(), drawn.finishedWidthMm()),
                    or(other.workingWidthMm(), drawn.workingWidthMm()),
                    or(other.turnDeg(), drawn.turnDeg()),
                    or(other.edgeCondition(), drawn.edgeCondition())))
        .orElse(drawn);
  }

  private static Optional<OfFlange> named(List<OfFlange> flanges, String name) {
    return flanges.stream().filter(flange -> flange.name().equals(name)).findFirst();
  }

  private static String or(String written, String drawn) {
    return written.isEmpty() ? drawn : written;
  }
}
