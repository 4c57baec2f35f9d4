package dev.flangewright.parts;

import dev.flangewright.people.Refused;
import java.util.List;
import java.util.stream.Collectors;

/** A register entry that cannot be taken over, with every fault that was found. */
public final class DrawingRefused extends Refused {

  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  DrawingRefused(List<Fault> faults) {
    super(Kind.UNACCEPTABLE, faults.stream().map(Fault::sentence).collect(Collectors.joining(" ")));
    this.faults = faults;
  }

  public List<Fault> faults() {
    return faults;
  }
}
