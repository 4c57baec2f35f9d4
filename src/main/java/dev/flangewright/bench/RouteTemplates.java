package dev.flangewright.bench;

import dev.flangewright.people.Clearance;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The routes that a build begins with, one for each nature of part. The order of their stages is
 * common practice, no source; the lead makes a new version where the workshop does it another way.
 */
final class RouteTemplates {

  static final String EDGE_CHECK =
      "Both faces deburred, edge broken 0.1 to 0.4 mm and polished lengthwise, no nick or scratch"
          + " across it under a 10x glass";

  private static final String FORM_BLOCK = "FORM_BLOCK";
  private static final String DRILL_TEMPLATE = "DRILL_TEMPLATE";

  private final Route route;

  private RouteTemplates(Route route) {
    this.route = route;
  }

  /** What a route for parts of this nature is called. */
  static String nameFor(PartNature nature) {
    return switch (nature) {
      case PLAIN -> "Plain part";
      case SHRINK_FLANGE -> "One shrink flange";
      case STRETCH_FLANGE -> "One stretch flange";
      case TWO_FLANGES -> "Two flanges";
      case HEAT_TREATED -> "Heat treated";
    };
  }

  /** Version 1, released, of the route for parts of this nature. */
  static Route route(PartNature nature, long buildId, String who, Instant now) {
    Route route = new Route(buildId, nameFor(nature), new Signature(who, now, ""));
    RouteTemplates template = new RouteTemplates(route);
    template.blank();
    switch (nature) {
      case PLAIN -> template.bent();
      case SHRINK_FLANGE -> template.formed(List.of(StageKind.FORM_SHRINK));
      case STRETCH_FLANGE -> template.formed(List.of(StageKind.FORM_STRETCH));
      case TWO_FLANGES -> template.formed(List.of(StageKind.FORM_SHRINK, StageKind.FORM_STRETCH));
      case HEAT_TREATED -> template.heatTreated();
    }
    template.inspected();
    route.release();
    return route;
  }

  private void blank() {
    add("lay-out-and-cut", cut("Lay out and cut", StageKind.CUT), 0);
    add("tooling-holes", cut("Tooling holes", StageKind.DRILL).over(DRILL_TEMPLATE), 0);
    add("cutouts", cut("Cutouts", StageKind.PIERCE), 0);
    StageCard edges = new StageCard("Edges deburred and polished", StageKind.EDGE);
    add("edges", edges.heldFor(EDGE_CHECK), 0);
  }

  private void bent() {
    add("bend", new StageCard("Bend the straight flanges", StageKind.SET).over(FORM_BLOCK), 1);
    finalTrim();
  }

  private void formed(List<StageKind> flanges) {
    form(flanges);
    set();
    finalTrim();
  }

  private void heatTreated() {
    form(List.of(StageKind.FORM_SHRINK, StageKind.FORM_STRETCH));
    StageCard treat = new StageCard("Solution treat and quench", StageKind.HEAT_TREAT);
    add("heat-treat", treat.clearedFor(Clearance.HEAT_TREAT), 0)
        .ask(CheckCard.yes("Furnace chart kept with the piece"));
    set();
    finalTrim();
    add("protect", new StageCard("Wash, dry and protect", StageKind.PROTECT), 0);
  }

  private void form(List<StageKind> flanges) {
    add("first-flange", form("First flange in passes", flanges.get(0)), 1);
    add("trim-to-working-width", cut("Trim to working width", StageKind.TRIM), 1);
    if (flanges.size() > 1) {
      add("second-flange", form("Second flange", flanges.get(1)), 2);
    }
  }

  private void set() {
    StageCard set = new StageCard("Set to template", StageKind.SET);
    add("set-to-template", set.over(FORM_BLOCK), 0);
  }

  private void finalTrim() {
    add("final-trim", cut("Final trim", StageKind.TRIM), 0);
  }

  private void inspected() {
    add("inspect", inspector("Inspect", StageKind.INSPECT), 0);
    add("accepted", inspector("Accepted", StageKind.ACCEPT), 0);
  }

  private static StageCard cut(String name, StageKind kind) {
    return card(name, kind, Clearance.CUT, null);
  }

  private static StageCard form(String name, StageKind kind) {
    boolean shrink = kind == StageKind.FORM_SHRINK;
    return card(name, kind, shrink ? Clearance.FORM_SHRINK : Clearance.FORM_STRETCH, FORM_BLOCK);
  }

  private static StageCard inspector(String name, StageKind kind) {
    return card(name, kind, Clearance.INSPECT, null);
  }

  private static StageCard card(
      String name, StageKind kind, Clearance clearance, @Nullable String block) {
    return new StageCard(name, kind, null, clearance, null, false, block, null);
  }

  private RouteStage add(String code, StageCard card, int flanges) {
    return route.append(code, new StagePlan(card, flanges));
  }
}
