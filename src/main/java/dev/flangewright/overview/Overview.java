package dev.flangewright.overview;

import dev.flangewright.bench.NextJob;
import dev.flangewright.forming.RiskLevel;
import dev.flangewright.quality.ScrapTally;
import java.util.List;

/**
 * How far a build is, as its managers ask.
 *
 * @param parts counts over all parts
 * @param stages along the route
 * @param frames along the hull
 * @param risks one for each level, least first
 * @param withoutFigures parts whose risk nobody can tell, because they have no figures
 * @param hardest the parts that are not accepted and nearest to their limit, hardest first
 * @param scrap causes that have cost pieces, the commonest first
 * @param next what to form next, the first to be done first
 * @param hull every part, along the hull
 */
public record Overview(
    long buildId,
    String name,
    StateCounts parts,
    List<StageProgress> stages,
    List<FrameProgress> frames,
    List<RiskCount> risks,
    int withoutFigures,
    List<HullPart> hardest,
    List<ScrapTally> scrap,
    List<NextJob> next,
    List<HullPart> hull) {

  /**
   * A stage of the route.
   *
   * @param done parts that are past it
   * @param begun parts that are being worked on at it
   * @param held parts that wait at it for its check
   * @param total parts that go through it
   */
  public record StageProgress(String code, String name, int done, int begun, int held, int total) {}

  /** A frame and its parts. */
  public record FrameProgress(String code, double positionMm, StateCounts parts) {}

  /**
   * A level of risk.
   *
   * @param parts all parts at this level
   * @param toCome those of them that are not accepted
   */
  public record RiskCount(RiskLevel level, int parts, int toCome) {}
}
