package dev.flangewright.parts.web;

import dev.flangewright.forming.Risk;
import dev.flangewright.forming.RiskLevel;
import dev.flangewright.forming.RiskMode;
import dev.flangewright.parts.PartFigures;
import java.util.Comparator;
import java.util.stream.Collectors;

/** Answers "Will this edge go round?" in a sentence or two, from the governing risk. */
final class Verdict {

  private Verdict() {}

  static String of(PartFigures figures) {
    Risk risk = figures.risk();
    if (risk == null) {
      return "Nobody can say yet: no flange has a contour.";
    }
    String unknown =
        risk.unknown().stream().map(RiskMode::label).collect(Collectors.joining(" or "));
    String sure = opening(risk, unknown.isEmpty()) + reason(figures, risk);
    return unknown.isEmpty()
        ? sure
        : sure + " Whether it will " + unknown + " cannot be told: the metal's values are missing.";
  }

  private static String opening(Risk risk, boolean allKnown) {
    if (risk.level() == RiskLevel.BEYOND) {
      return "By the figures, no: ";
    }
    if (!allKnown) {
      return "Only half an answer: ";
    }
    return switch (risk.level()) {
      case LOW -> "By the figures, yes: ";
      case MODERATE -> "By the figures, with care: ";
      default -> "By the figures, barely: ";
    };
  }

  private static String reason(PartFigures figures, Risk risk) {
    if (risk.utilisation() == 0) {
      return "folding alone makes it.";
    }
    String used = Figure.percent(risk.utilisation(), 0).toString();
    return switch (risk.governing()) {
      case SPLIT -> split(figures) + used + " of what this edge takes before it splits.";
      case BEND_RADIUS -> "the smallest bend allowed this metal is " + used + " of the bend drawn.";
      case RUFFLE -> passes(figures) + " passes to gather; eight count as the limit.";
    };
  }

  private static String split(PartFigures figures) {
    return figures.flanges().stream()
        .max(Comparator.comparingDouble(one -> peakSplit(one)))
        .map(
            one ->
                "the "
                    + one.flange().name()
                    + " edge, "
                    + one.flange().edgeCondition().label()
                    + ", has to stretch to ")
        .orElseThrow();
  }

  private static double peakSplit(PartFigures.OfFlange one) {
    Double utilisation = one.working().peakSplitUtilisation();
    return utilisation == null ? 0 : utilisation;
  }

  private static String passes(PartFigures figures) {
    return figures.flanges().stream()
        .filter(one -> one.working().takeOutMm() > 0)
        .max(Comparator.comparingInt(one -> one.working().passes()))
        .map(one -> "the " + one.flange().name() + " edge takes " + one.working().passes())
        .orElseThrow();
  }
}
