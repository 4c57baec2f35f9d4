package dev.flangewright.overview.demo;

import dev.flangewright.bench.RouteStage;
import dev.flangewright.bench.StageKind;
import dev.flangewright.overview.demo.Act.Kind;
import dev.flangewright.overview.demo.Ending.Way;
import dev.flangewright.people.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One person's bench in the demo: turns tales into entries, one stage a session, one piece after
 * the other, so that the last session falls on the day before. Hours fall a little with practice.
 */
class DemoBench {

  private static final Map<StageKind, Double> USUAL_HOURS =
      Map.of(
          StageKind.CUT, 0.9,
          StageKind.DRILL, 0.35,
          StageKind.PIERCE, 0.5,
          StageKind.EDGE, 0.8,
          StageKind.FORM_SHRINK, 2.4,
          StageKind.FORM_STRETCH, 2.4,
          StageKind.TRIM, 0.4,
          StageKind.SET, 1.0);

  private static final Map<StageKind, String> REMARKS =
      Map.of(
          StageKind.CUT, "Grain square to the long edge",
          StageKind.EDGE, "Draw-filed, then 600 paper lengthwise",
          StageKind.FORM_SHRINK, "Ends first, then towards the middle",
          StageKind.FORM_STRETCH, "Ends first, then towards the middle",
          StageKind.SET, "Trued a little after it came off the block");

  private final Role hand;
  private final List<RouteStage> route;
  private final List<Draft> drafts = new ArrayList<>();
  private int session;
  private int pieces;

  DemoBench(Role hand, List<RouteStage> route) {
    this.hand = hand;
    this.route = route.stream().filter(stage -> !stage.kind().byInspection()).toList();
  }

  /** The entries of all the tales. */
  List<Act> acts(List<Tale> tales, Instant now) {
    tales.forEach(tale -> tale.pieces().forEach(ending -> piece(tale.partNumber(), ending)));
    Sessions sessions = new Sessions(now);
    return drafts.stream().map(draft -> draft.at(sessions, session - 1)).toList();
  }

  private void piece(String part, Ending ending) {
    pieces++;
    add(0, hand, part, Kind.BEGIN, "", null, "", "");
    for (RouteStage stage : route) {
      boolean isTheOne = stage.code().equals(ending.stage());
      if (isTheOne && stops(part, stage, ending)) {
        return;
      }
      work(part, stage);
      if (isTheOne && ending.way() == Way.ACCEPTED_AFTER_SLIP) {
        slip(part, stage, ending);
      }
    }
    inspect(part, ending);
  }

  private boolean stops(String part, RouteStage stage, Ending ending) {
    switch (ending.way()) {
      case LEFT_BEFORE -> {
        return true;
      }
      case LEFT_AT -> {
        add(10, hand, part, Kind.START, stage.code(), null, "", "");
        session++;
        return true;
      }
      case SCRAPPED -> {
        add(10, hand, part, Kind.START, stage.code(), null, "", "");
        Role who = hand == Role.VOLUNTEER ? Role.LEAD : hand;
        add(95, who, part, Kind.SCRAP, stage.code(), null, ending.cause(), ending.note());
        session++;
        return true;
      }
      default -> {
        return false;
      }
    }
  }

  private void work(String part, RouteStage stage) {
    double hours = hours(part, stage);
    int end = 10 + (int) (hours * 60);
    add(10, hand, part, Kind.START, stage.code(), null, "", "");
    if (stage.holdCheck() != null) {
      add(end - 5, Role.INSPECTOR, part, Kind.CHECK, stage.code(), null, "", "");
    }
    add(end, hand, part, Kind.FINISH, stage.code(), hours, "", remark(part, stage));
    session++;
  }

  private void slip(String part, RouteStage stage, Ending ending) {
    add(0, hand, part, Kind.UNDO, stage.code(), null, "", ending.note());
    add(45, hand, part, Kind.FINISH, stage.code(), hours(part, stage), "", "");
    session++;
  }

  private void inspect(String part, Ending ending) {
    if (ending.way() == Way.ACCEPTED_AFTER_REWORK) {
      add(20, Role.INSPECTOR, part, Kind.REWORK, ending.stage(), null, "", ending.note());
      session++;
      route.stream()
          .dropWhile(stage -> !stage.code().equals(ending.stage()))
          .forEach(stage -> work(part, stage));
    }
    if (ending.way() == Way.LEFT_BEFORE) {
      return;
    }
    Kind kind = ending.way() == Way.CONCESSION ? Kind.CONCEDE : Kind.ACCEPT;
    String note = kind == Kind.CONCEDE ? ending.note() : "";
    add(30, Role.INSPECTOR, part, kind, "", null, "", note);
    session++;
  }

  /** Usual hours, 20 % up or down by the part, times pieces^(−0.1); to a twentieth of an hour. */
  private double hours(String part, RouteStage stage) {
    double usual = USUAL_HOURS.getOrDefault(stage.kind(), 0.5);
    double lot = 0.8 + 0.4 * luck(part, stage, 100) / 100;
    return Math.max(1, Math.round(usual * lot * Math.pow(pieces, -0.1) * 20)) / 20.0;
  }

  private static String remark(String part, RouteStage stage) {
    return luck(part, stage, 6) == 0 ? REMARKS.getOrDefault(stage.kind(), "") : "";
  }

  private static int luck(String part, RouteStage stage, int sides) {
    return Math.floorMod((part + stage.code()).hashCode(), sides);
  }

  private void add(
      int minute,
      Role by,
      String part,
      Kind kind,
      String stage,
      @Nullable Double hours,
      String cause,
      String note) {
    Act undated = new Act(Instant.EPOCH, by, part, kind, stage, hours, cause, note);
    drafts.add(new Draft(session, minute, undated));
  }

  /** An entry in a session that has no date yet. */
  private record Draft(int session, int minute, Act act) {

    Act at(Sessions sessions, int latest) {
      Instant at = sessions.begin(latest - session).plus(Duration.ofMinutes(minute));
      return new Act(
          at,
          act.by(),
          act.partNumber(),
          act.kind(),
          act.stage(),
          act.hours(),
          act.cause(),
          act.note());
    }
  }
}
