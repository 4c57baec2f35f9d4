package dev.flangewright.overview.web;

import dev.flangewright.bench.NextJob;
import dev.flangewright.forming.RiskLevel;
import dev.flangewright.forming.RiskMode;
import dev.flangewright.overview.HullPart;
import dev.flangewright.overview.Overview;
import dev.flangewright.overview.Overview.RiskCount;
import dev.flangewright.overview.Overview.StageProgress;
import dev.flangewright.overview.StateCounts;
import dev.flangewright.parts.PartState;
import dev.flangewright.parts.RegisterPart;
import dev.flangewright.quality.ScrapTally;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How far a build is. */
record OverviewAnswer(
    long buildId,
    String name,
    Counts parts,
    @Schema(description = "Along the route.") List<StageProgress> stages,
    @Schema(description = "Along the hull.") List<FrameAnswer> frames,
    @Schema(description = "One for each level, least first.") List<RiskCount> risks,
    @Schema(description = "Parts whose risk cannot be told: they have no figures.")
        int withoutFigures,
    @Schema(description = "Not accepted and nearest to their limit, hardest first.")
        List<HardPart> hardest,
    @Schema(description = "Causes that cost pieces, the commonest first.") List<ScrapTally> scrap,
    @Schema(description = "What to form next, for the account that asks, with the reasons.")
        List<NextJob> next,
    String caution) {

  private static final String CAUTION =
      "Figures are shop estimates. The approved drawing, local rules and licensed people decide.";

  /** How many parts are in each state. */
  @Schema(name = "PartCounts")
  record Counts(
      int total,
      @Schema(description = "Accepted, with or without a concession.") int done,
      int notBegun,
      int inWork,
      int held,
      int accepted,
      int concession) {

    static Counts of(StateCounts counts) {
      return new Counts(
          counts.total(),
          counts.done(),
          counts.notBegun(),
          counts.inWork(),
          counts.held(),
          counts.accepted(),
          counts.concession());
    }
  }

  /** A frame and its parts. */
  record FrameAnswer(String code, double positionMm, Counts parts) {}

  /** A part near its limit. */
  record HardPart(
      long id,
      String partNumber,
      String frame,
      PartState state,
      @Nullable RiskMode riskMode,
      @Nullable RiskLevel riskLevel,
      @Schema(description = "Share of the limit that is used up; null when beyond any measure.")
          @Nullable Double riskUtilisation) {

    static HardPart of(HullPart hard) {
      RegisterPart part = hard.part();
      Double used = part.riskUtilisation();
      return new HardPart(
          part.id(),
          part.partNumber(),
          part.frame(),
          hard.progress().state(),
          part.riskMode(),
          part.riskLevel(),
          used == null || !Double.isFinite(used) ? null : used);
    }
  }

  static OverviewAnswer of(Overview overview) {
    return new OverviewAnswer(
        overview.buildId(),
        overview.name(),
        Counts.of(overview.parts()),
        overview.stages(),
        overview.frames().stream()
            .map(f -> new FrameAnswer(f.code(), f.positionMm(), Counts.of(f.parts())))
            .toList(),
        overview.risks(),
        overview.withoutFigures(),
        overview.hardest().stream().map(HardPart::of).toList(),
        overview.scrap(),
        overview.next(),
        CAUTION);
  }
}
