package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Finds the other hand of a part. */
@Service
public class TwinOf {

  private final Twins twins;

  TwinOf(Twins twins) {
    this.twins = twins;
  }

  /** The twin; empty if the part has no hand, no twin, or several that would do. */
  @Transactional(readOnly = true)
  public Optional<Part> part(long partId) {
    return twins.of(partId);
  }
}
