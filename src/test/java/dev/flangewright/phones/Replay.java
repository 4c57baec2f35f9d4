package dev.flangewright.phones;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Plays the log of a piece again, by a reckoning of its own, to see where the piece must stand. */
final class Replay {

  /** How it stands with a stage: begun, checked, finished. */
  record Stage(boolean begun, boolean checked, boolean finished) {

    static final Stage TO_DO = new Stage(false, false, false);

    Stage after(String action) {
      return switch (action) {
        case "START" -> {
          assertThat(this).isEqualTo(TO_DO);
          yield new Stage(true, false, false);
        }
        case "CHECK" -> {
          assertThat(this).isEqualTo(new Stage(true, false, false));
          yield new Stage(true, true, false);
        }
        case "FINISH" -> {
          assertThat(begun && !finished).isTrue();
          yield new Stage(true, checked, true);
        }
        default -> throw new AssertionError(action);
      };
    }

    Stage without(String action) {
      return switch (action) {
        case "START" -> TO_DO;
        case "CHECK" -> new Stage(true, false, false);
        case "FINISH" -> new Stage(true, checked, false);
        default -> throw new AssertionError(action);
      };
    }

    boolean open() {
      return begun && !finished;
    }
  }

  private final Map<String, Stage> stages = new LinkedHashMap<>();
  private final Deque<Script.Step> standing = new ArrayDeque<>();

  private Replay(List<String> route) {
    route.forEach(stage -> stages.put(stage, Stage.TO_DO));
  }

  /** Where a piece stands after these entries; fails if one of them could not be. */
  static Map<String, Stage> of(List<String> route, List<Script.Step> log) {
    Replay replay = new Replay(route);
    log.forEach(replay::take);
    return replay.stages;
  }

  private void take(Script.Step step) {
    if (step.action().equals("UNDO")) {
      Script.Step last = standing.pop();
      assertThat(step.stage()).isEqualTo(last.stage());
      stages.computeIfPresent(last.stage(), (code, stage) -> stage.without(last.action()));
    } else {
      standing.push(step);
      stages.computeIfPresent(step.stage(), (code, stage) -> stage.after(step.action()));
    }
    assertInOrder();
  }

  /** At most one stage is open, all before it are finished, none after it is begun. */
  private void assertInOrder() {
    boolean before = true;
    for (Map.Entry<String, Stage> stage : stages.entrySet()) {
      assertThat(stage.getValue().begun() && !before).as(stage.getKey()).isFalse();
      before = before && stage.getValue().finished();
    }
  }
}
