package dev.flangewright.heat;

import dev.flangewright.materials.FormingWindow;
import dev.flangewright.people.LogTime;
import java.util.stream.Stream;

/** Tells a quench and what followed as events. */
final class HeatEvents {

  private HeatEvents() {}

  static Stream<HeatEvent> of(Quench quench, FormingWindow figures) {
    boolean back = quench.takenBack();
    Told told = quench.told();
    HeatEvent first =
        new HeatEvent(
            told, "told the quench at " + LogTime.of(quench.quenchedAt(), told.receivedAt()), back);
    Stream<HeatEvent> cold = quench.stays().stream().flatMap(stay -> of(quench, stay, figures));
    LateForming late = quench.late();
    Stream<HeatEvent> let =
        late == null
            ? Stream.empty()
            : Stream.of(
                new HeatEvent(late.told(), "let it be formed past its forming window", back));
    return Stream.of(Stream.of(first), cold, let).flatMap(each -> each);
  }

  private static Stream<HeatEvent> of(Quench quench, ColdStay stay, FormingWindow figures) {
    boolean back = quench.takenBack();
    Told in = stay.in();
    Countdown then = quench.countdown(figures, in.at());
    String into =
        "put it into the freezer at %s%s"
            .formatted(
                CountdownWords.degrees(stay.stay()), CountdownWords.frozenLate(then, figures));
    HeatEvent entered = new HeatEvent(in, into, back);
    Told out = stay.out();
    return out == null
        ? Stream.of(entered)
        : Stream.of(entered, new HeatEvent(out, "took it out of the freezer", back));
  }
}
