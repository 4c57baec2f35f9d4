package dev.flangewright.bench.web;

import dev.flangewright.bench.StageKind;
import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.FlangeSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The caution of a stage, and the few forming figures that matter while it is done. */
final class StageAdvice {

  private StageAdvice() {}

  /** Hazards are common practice, no source; the workshop's own rules come first. */
  static Optional<String> caution(StageKind kind) {
    return Optional.ofNullable(
        switch (kind) {
          case CUT, TRIM ->
              "Eye protection; cut-resistant gloves for handling, none at routers or shears.";
          case DRILL, PIERCE ->
              "Eye protection; no gloves at the drill or router. Brush swarf off.";
          case EDGE -> "Eye protection; cut-resistant gloves until the edges are broken.";
          case FORM_SHRINK, FORM_STRETCH, SET ->
              "Eye and ear protection; gloves for handling. The figures are shop estimates: the"
                  + " approved drawing and the metal decide.";
          case HEAT_TREAT ->
              "Face shield, apron and heat-resistant gloves at furnace and quench. Only dry parts go"
                  + " into a salt bath: water in it throws molten salt. Temperatures and times are"
                  + " those of the approved specification.";
          case PROTECT ->
              "Gloves and eye protection; fresh air or a mask as the data sheet of the product says.";
          case INSPECT, ACCEPT -> null;
        });
  }

  /**
   * One sentence a flange, and what they rest on; empty where the stage needs none or the part has
   * no figures.
   */
  static List<String> figures(StageKind kind, List<Flange> flanges, SplitGround ground) {
    Stream<Optional<String>> sentences =
        switch (kind) {
          case FORM_SHRINK, FORM_STRETCH, SET -> flanges.stream().map(StageAdvice::demand);
          case EDGE -> flanges.stream().map(flange -> edge(flange, ground));
          default -> Stream.empty();
        };
    List<String> said = new ArrayList<>(sentences.flatMap(Optional::stream).toList());
    if (kind == StageKind.EDGE && !said.isEmpty()) {
      said.add(ground.words());
    }
    return said;
  }

  private static Optional<String> demand(Flange flange) {
    FlangeSummary figures = flange.summary();
    Double strain = figures.peakEdgeStrain();
    Double gather = figures.gatherMm();
    if (strain == null || gather == null) {
      return Optional.empty();
    }
    List<String> facts = new ArrayList<>();
    facts.add(
        "%s strain at the edge, most at station %d"
            .formatted(percent(strain), figures.peakStation()));
    facts.add("%s mm to %s".formatted(number(Math.abs(gather)), gather >= 0 ? "gather" : "gain"));
    Integer passes = figures.passes();
    if (passes != null) {
      facts.add(passes == 1 ? "1 pass" : passes + " passes");
    }
    return Optional.of(name(flange) + ": " + String.join("; ", facts) + ".");
  }

  private static Optional<String> edge(Flange flange, SplitGround ground) {
    FlangeSummary figures = flange.summary();
    Double strain = figures.peakEdgeStrain();
    Double used = figures.splitUtilisation();
    if (strain == null || used == null || strain <= 0 || used <= 0) {
      return Optional.empty();
    }
    double uncut = used * ground.factor(flange.edgeCondition());
    double polished = uncut / ground.factor(EdgeCondition.POLISHED);
    double burred = uncut / ground.factor(EdgeCondition.SHEARED_WITH_BURR);
    return Optional.of(
        "%s: its edge stretches %s. Polished, that is %s of what it takes before it splits; left sheared with its burr, %s%s."
            .formatted(
                name(flange),
                percent(strain),
                whole(polished),
                whole(burred),
                burred > 1 ? ": expect it to split" : ""));
  }

  private static String name(Flange flange) {
    FlangeKind kind = flange.drawn().kind();
    return "Flange %s (%s)".formatted(flange.name(), kind.name().toLowerCase(Locale.ROOT));
  }

  private static String percent(double strain) {
    return number(strain * 100) + " %";
  }

  private static String whole(double share) {
    return Math.round(share * 100) + " %";
  }

  /** One decimal, with a true minus sign. */
  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value).replace('-', '−');
  }
}
