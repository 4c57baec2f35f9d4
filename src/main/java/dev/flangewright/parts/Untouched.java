package dev.flangewright.parts;

import dev.flangewright.parts.PartProgress.Progress;
import dev.flangewright.people.Refused;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** The rule that what has been worked on stays in the register. */
@Component
class Untouched {

  private final ObjectProvider<PartProgress> progress;

  Untouched(ObjectProvider<PartProgress> progress) {
    this.progress = progress;
  }

  void orRefuse(Part part) {
    boolean touched =
        progress.stream()
            .map(module -> module.ofBuild(part.build().id()).get(part.id()))
            .anyMatch(Untouched::isTouched);
    if (touched) {
      throw Refused.conflict(
          "Pieces of " + part.partNumber() + " have been begun; their record needs it as it is.");
    }
  }

  private static boolean isTouched(@Nullable Progress progress) {
    return progress != null && (progress.state() != PartState.NOT_BEGUN || progress.scrapped() > 0);
  }
}
