package dev.flangewright.bench;

import dev.flangewright.bench.FindLines.PartFound;
import dev.flangewright.bench.FindLines.PieceFound;
import dev.flangewright.parts.BuildLine;
import dev.flangewright.parts.Builds;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Finds the piece that somebody holds in the hand, by what is written on it or on its label.
 * Without a piece number it is the piece in work, else the newest, else the part itself.
 */
@Service
public class FindPiece {

  private static final int MOST = 24;

  private final FindLines lines;
  private final Builds builds;

  FindPiece(FindLines lines, Builds builds) {
    this.lines = lines;
    this.builds = builds;
  }

  /**
   * Looks in one build. Case, blanks, hyphens, points and strokes do not matter.
   *
   * @return those that fit exactly; if none does, at most 24 whose number contains what was typed
   */
  @Transactional(readOnly = true)
  public List<Found> inBuild(long buildId, String typed) {
    return in(List.of(buildId), typed);
  }

  /** The same in all builds, for a label: several builds may use the same part number. */
  @Transactional(readOnly = true)
  public List<Found> anywhere(String typed) {
    return in(builds.lines().stream().map(BuildLine::id).toList(), typed);
  }

  private List<Found> in(Collection<Long> builds, String typed) {
    List<Sought> readings =
        Sought.readings(typed).stream().filter(one -> !one.partKey().isEmpty()).toList();
    if (readings.isEmpty() || builds.isEmpty()) {
      return List.of();
    }
    List<PartFound> exact = lines.partsOf(builds, readings.stream().map(Sought::partKey).toList());
    if (exact.isEmpty()) {
      List<PartFound> like = lines.partsLike(builds, escaped(readings), Limit.of(MOST));
      return found(like, part -> Stream.of(0));
    }
    return found(exact, part -> numbers(part, readings));
  }

  private static Stream<Integer> numbers(PartFound part, List<Sought> readings) {
    return readings.stream().filter(one -> one.partKey().equals(part.key())).map(Sought::piece);
  }

  private static String escaped(List<Sought> readings) {
    return readings.get(readings.size() - 1).partKey().replaceAll("([!%_])", "!$1");
  }

  private interface Asked {
    Stream<Integer> pieces(PartFound part);
  }

  private List<Found> found(List<PartFound> parts, Asked asked) {
    Map<Long, List<PieceFound>> pieces =
        lines.piecesOf(parts.stream().map(PartFound::id).toList()).stream()
            .collect(Collectors.groupingBy(PieceFound::partId));
    return parts.stream()
        .flatMap(
            part ->
                asked
                    .pieces(part)
                    .map(number -> of(part, pieces.getOrDefault(part.id(), List.of()), number)))
        .toList();
  }

  private static Found of(PartFound part, List<PieceFound> pieces, int number) {
    Optional<PieceFound> named = pieces.stream().filter(one -> one.number() == number).findFirst();
    boolean exact = number == 0 || named.isPresent();
    return named
        .or(() -> inWork(pieces))
        .or(() -> pieces.stream().reduce((first, second) -> second))
        .map(piece -> onPiece(part, piece, exact, number))
        .orElseGet(() -> onSheet(part, exact, number));
  }

  private static Optional<PieceFound> inWork(List<PieceFound> pieces) {
    return pieces.stream().filter(piece -> piece.state() == PieceState.IN_WORK).findFirst();
  }

  private static Found onPiece(PartFound part, PieceFound piece, boolean exact, int asked) {
    String words = "piece %d, %s".formatted(piece.number(), piece.state().word());
    return new Found(
        part.partNumber(),
        part.buildName(),
        piece.number(),
        "/pieces/" + piece.id(),
        exact ? words : "%s; there is no piece %d".formatted(words, asked),
        exact);
  }

  private static Found onSheet(PartFound part, boolean exact, int asked) {
    String words = "no piece has been begun";
    return new Found(
        part.partNumber(),
        part.buildName(),
        0,
        "/parts/" + part.id(),
        exact ? words : "%s, so there is no piece %d".formatted(words, asked),
        exact);
  }
}
