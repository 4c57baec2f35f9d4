package dev.flangewright.overview.web;

import dev.flangewright.bench.InWords;
import dev.flangewright.bench.NextJob;
import dev.flangewright.overview.Wall;
import dev.flangewright.overview.WallEntry;
import dev.flangewright.overview.WallPiece;
import dev.flangewright.people.LogTime;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.function.Function;

/**
 * The wall board in few and short lines, so that it can be read from across the shop.
 *
 * @param asOf the installation's clock, to the second
 */
record WallPage(
    String frames,
    String parts,
    Group onTheBench,
    Group waiting,
    Group next,
    Group logged,
    String asOf) {

  private static final int BENCH_LINES = 4;
  private static final int WAITING_LINES = 2;
  private static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("HH:mm:ss");

  /**
   * One thing.
   *
   * @param said about it; may be empty
   */
  record Line(String mark, String thing, String said) {}

  /** Some lines, and how many more there are. */
  record Group(List<Line> lines, int more) {

    static <T> Group of(List<T> all, int shown, Function<T, Line> line) {
      return new Group(
          all.stream().limit(shown).map(line).toList(), Math.max(0, all.size() - shown));
    }
  }

  static WallPage of(Wall wall, ZoneId zone) {
    Instant now = wall.asOf();
    return new WallPage(
        "%d of %d frames done".formatted(wall.framesDone(), wall.frames()),
        "%d of %d segments accepted".formatted(wall.accepted(), wall.parts()),
        Group.of(wall.onTheBench(), BENCH_LINES, piece -> onTheBench(piece, now)),
        Group.of(wall.waiting(), WAITING_LINES, piece -> waiting(piece, now)),
        Group.of(wall.next(), wall.next().size(), WallPage::next),
        Group.of(wall.logged(), wall.logged().size(), entry -> logged(entry, now)),
        SECONDS.withZone(zone).format(now));
  }

  private static Line onTheBench(WallPiece piece, Instant now) {
    return new Line("IN_WORK", piece(piece), stage(piece) + ", " + by(piece, now));
  }

  private static Line waiting(WallPiece piece, Instant now) {
    return piece.held()
        ? new Line("HELD", piece(piece), "check " + stage(piece) + after(piece, now))
        : new Line("IN_WORK", piece(piece), "inspect it");
  }

  private static Line next(NextJob job) {
    String reason = job.reasons().isEmpty() ? "" : job.reasons().get(0);
    return job.pieceId() == null
        ? new Line(
            "NOT_BEGUN",
            "Begin piece %d of %s".formatted(job.pieceNumber(), job.partNumber()),
            reason)
        : new Line(
            "IN_WORK",
            piece(job.partNumber(), job.pieceNumber()) + ": " + InWords.within(job.stageName()),
            reason);
  }

  private static Line logged(WallEntry entry, Instant now) {
    String what =
        "%s %s “%s”%s"
            .formatted(
                entry.who(),
                entry.action().word(),
                InWords.within(entry.stage()),
                entry.undone() ? " (taken back later)" : "");
    String on = piece(entry.partNumber(), entry.number()) + ", " + LogTime.of(entry.at(), now);
    return new Line("", on, what);
  }

  private static String piece(WallPiece piece) {
    return piece(piece.partNumber(), piece.number());
  }

  private static String piece(String partNumber, int number) {
    return partNumber + " piece " + number;
  }

  private static String stage(WallPiece piece) {
    String stage = piece.stage();
    return stage == null ? "" : InWords.within(stage);
  }

  private static String by(WallPiece piece, Instant now) {
    Instant since = piece.since();
    return since == null ? "" : piece.who() + " since " + LogTime.of(since, now);
  }

  private static String after(WallPiece piece, Instant now) {
    Instant since = piece.since();
    return since == null ? "" : " since " + LogTime.of(since, now);
  }
}
