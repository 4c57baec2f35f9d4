package dev.flangewright.bench;

import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.blocks.BlockKind;
import dev.flangewright.blocks.BlockLine;
import dev.flangewright.blocks.BlocksOfBuild;
import dev.flangewright.blocks.BlocksOfSet;
import dev.flangewright.parts.Hand;
import dev.flangewright.parts.Written;
import dev.flangewright.people.Clearance;
import dev.flangewright.people.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A bench told in words, for the ranking: parts named like {@code F2-S1L}, frame, segment and hand.
 * Both hands share a block set, {@code F2-S1}. Frames stand along the hull by their numbers.
 */
final class ABench {

  static final Instant NOON = Instant.parse("2026-06-02T12:00:00Z");
  static final StageCard CUT =
      new StageCard("Lay out and cut", StageKind.CUT).clearedFor(Clearance.CUT);
  static final StageCard EDGES = new StageCard("Edges", StageKind.EDGE).heldFor("deburred");
  static final StageCard SHRINK =
      new StageCard("First flange", StageKind.FORM_SHRINK)
          .clearedFor(Clearance.FORM_SHRINK)
          .over("FORM_BLOCK");
  static final StageCard SET = new StageCard("Set", StageKind.SET).over("FORM_BLOCK");
  static final StageCard TREAT =
      new StageCard("Quench", StageKind.HEAT_TREAT).clearedFor(Clearance.HEAT_TREAT);
  static final StageCard INSPECT =
      new StageCard("Inspect", StageKind.INSPECT).clearedFor(Clearance.INSPECT);

  private final List<PartLine> parts = new ArrayList<>();
  private final List<PieceLine> pieces = new ArrayList<>();
  private final Map<String, Integer> jig = new HashMap<>();
  private final Map<String, BlocksOfSet> blocks = new HashMap<>();
  private final Map<Long, ClosingWindow> windows = new HashMap<>();
  private final Set<String> lacking = new HashSet<>();
  private final List<SetUpLine> today = new ArrayList<>();
  private final List<PassOnLine> passed = new ArrayList<>();

  ABench jig(String frame, int order) {
    jig.put(frame, order);
    return this;
  }

  /**
   * @param risk LOW, MODERATE, HIGH or BEYOND; null for a part without figures
   */
  ABench part(String number, @Nullable String risk) {
    String frame = number.substring(0, number.indexOf('-'));
    Hand hand = number.endsWith("L") ? Hand.LEFT : number.endsWith("R") ? Hand.RIGHT : Hand.NONE;
    String segment = number.substring(frame.length() + 1).replaceAll("[LR]$", "");
    Written at = new Written(frame.substring(1) + "00");
    parts.add(
        new PartLine(
            parts.size() + 1,
            number,
            frame,
            at,
            jig.get(frame),
            segment,
            hand,
            frame + "-" + segment,
            "2024",
            "O",
            "1.2",
            risk,
            risk == null ? null : "SPLIT",
            null));
    return this;
  }

  ABench part(String number) {
    return part(number, "MODERATE");
  }

  ABench waitsAt(String part, StageCard stage, int done) {
    return piece(part, PieceState.IN_WORK, done, stage, null, false);
  }

  ABench begun(String part, StageCard stage, String by) {
    return piece(part, PieceState.IN_WORK, 4, stage, by, false);
  }

  ABench held(String part) {
    return piece(part, PieceState.IN_WORK, 3, EDGES, "fitter", true);
  }

  ABench scrapped(String part) {
    return piece(part, PieceState.SCRAPPED, 5, null, null, false);
  }

  ABench accepted(String part) {
    return piece(part, PieceState.ACCEPTED, 11, null, null, false);
  }

  private ABench piece(
      String part,
      PieceState state,
      int done,
      @Nullable StageCard stage,
      @Nullable String begunBy,
      boolean held) {
    int number = (int) pieces.stream().filter(piece -> piece.partId() == id(part)).count() + 1;
    pieces.add(
        new PieceLine(
            pieces.size() + 1,
            id(part),
            number,
            state,
            done,
            11,
            stage,
            begunBy != null,
            begunBy,
            held,
            2 * done));
    return this;
  }

  ABench softFor(String part, int minutes) {
    Instant closes = NOON.plus(Duration.ofMinutes(minutes));
    String words = "forming window closes in " + minutes + " min";
    windows.put(pieceOf(part), new ClosingWindow(closes, null, "", words));
    return this;
  }

  ABench tooHard(String part) {
    windows.put(
        pieceOf(part), new ClosingWindow(null, "Its forming window is past.", "the lead", "past"));
    return this;
  }

  ABench damagedBlock(String set) {
    BlockLine block = new BlockLine(1, set, BlockKind.FORM_BLOCK, 1, BlockCondition.NEEDS_REPAIR);
    blocks.put(set, new BlocksOfSet(set, List.of(block)));
    return this;
  }

  ABench noSheetFor(String part) {
    lacking.add(part);
    return this;
  }

  /** A stage over the part's block, finished an hour ago or still begun. */
  ABench workedOver(String part, String who, boolean finished) {
    PartLine line = part(id(part));
    Instant began = NOON.minus(Duration.ofHours(2)).plusSeconds(today.size());
    today.add(
        new SetUpLine(
            line.id(),
            line.blockSet(),
            "FORM_BLOCK",
            null,
            who,
            began,
            finished ? began.plus(Duration.ofHours(1)) : null));
    return this;
  }

  /** As the part's piece stands now. */
  ABench passedOn(String part, String who, String reason) {
    Optional<PieceLine> inWork = of(part).inWork();
    passed.add(
        new PassOnLine(
            id(part),
            who,
            inWork.map(PieceLine::number).orElse(of(part).nextNumber()),
            inWork.map(PieceLine::logLines).orElse(null),
            reason));
    return this;
  }

  /** The same things, read in another order; pieces stay in the order of their numbers. */
  ABench shuffled(long seed) {
    Random random = new Random(seed);
    List.of(parts, today, passed).forEach(lines -> Collections.shuffle(lines, random));
    return this;
  }

  List<NextJob> asks(Role role) {
    return asks(Hands.of(role.word(), role));
  }

  List<NextJob> asks(Hands who) {
    ShopFloor floor =
        new ShopFloor(
            new BlocksOfBuild(blocks),
            part ->
                lacking.contains(part.partNumber())
                    ? Optional.of("No sheet of 2024-O 1.2 mm is released.")
                    : Optional.empty(),
            windows,
            Map.of(Clearance.FORM_SHRINK, List.of("ann", "ben")),
            today,
            passed);
    return new Ranking(parts, pieces, part -> Optional.of(CUT)).jobs(Asking.of(who, floor));
  }

  private long pieceOf(String part) {
    return of(part).inWork().orElseThrow().id();
  }

  private Attempts of(String part) {
    return Attempts.byPart(pieces).getOrDefault(id(part), Attempts.NONE);
  }

  private long id(String number) {
    return parts.stream()
        .filter(part -> part.partNumber().equals(number))
        .findFirst()
        .orElseThrow()
        .id();
  }

  private PartLine part(long id) {
    return parts.stream().filter(part -> part.id() == id).findFirst().orElseThrow();
  }
}
