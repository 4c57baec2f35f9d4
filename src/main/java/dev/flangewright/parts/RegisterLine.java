package dev.flangewright.parts;

import dev.flangewright.parts.PartProgress.Progress;
import java.util.List;
import java.util.Objects;

/** A line of the register: a part, its flanges and how far it has come. */
public record RegisterLine(RegisterPart part, List<RegisterFlange> flanges, Progress progress) {

  /** The largest strain of any flange, without sign; −1 if none is known. */
  double largestStrain() {
    return flanges.stream()
        .map(RegisterFlange::peakEdgeStrain)
        .filter(Objects::nonNull)
        .mapToDouble(Math::abs)
        .max()
        .orElse(-1);
  }

  /** The utilisation of the governing risk; −1 if it is not known. */
  double utilisation() {
    return Objects.requireNonNullElse(part.riskUtilisation(), -1.0);
  }
}
