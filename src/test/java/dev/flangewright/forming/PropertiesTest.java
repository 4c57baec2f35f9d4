package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.lang.reflect.RecordComponent;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What must hold for any section; the seed is fixed, so a failure comes back. */
class PropertiesTest {

  private record Draw(
      FlangeKind kind, double radius, Sheet sheet, double width, double bendAngleDeg) {

    FlangeSection section() {
      return FlangeSection.of(kind, radius, sheet, width, bendAngleDeg);
    }

    Draw as(FlangeKind other) {
      return new Draw(other, radius, sheet, width, bendAngleDeg);
    }

    Draw scaled(double factor) {
      var scaled =
          new Sheet(
              sheet.thicknessMm() * factor,
              sheet.insideBendRadiusMm() * factor,
              sheet.kFactor(),
              sheet.anisotropy());
      return new Draw(kind, radius * factor, scaled, width * factor, bendAngleDeg);
    }

    Draw wider(double factor) {
      return new Draw(kind, radius, sheet, width * factor, bendAngleDeg);
    }

    Draw flatter(double factor) {
      return new Draw(kind, radius * factor, sheet, width, bendAngleDeg);
    }

    Draw turnedFurther(double factor) {
      return new Draw(kind, radius, sheet, width, bendAngleDeg * factor);
    }
  }

  /** Sections of the trade: width from twice the bend to 60 mm, radius at least ten widths. */
  private static Stream<Draw> ordinary(int count) {
    var random = new Random(20_11);
    return Stream.generate(() -> ordinary(random)).limit(count);
  }

  private static Draw ordinary(Random random) {
    double thickness = random.nextDouble(0.5, 2.5);
    double inside = random.nextDouble(1, 5) * thickness;
    double width = (inside + thickness) * random.nextDouble(2.5, 5);
    return new Draw(
        random.nextBoolean() ? FlangeKind.SHRINK : FlangeKind.STRETCH,
        width * Math.exp(random.nextDouble(Math.log(10), Math.log(200))),
        new Sheet(thickness, inside, random.nextDouble(0.3, 0.5), random.nextDouble(0.4, 2)),
        width,
        random.nextDouble(20, 88));
  }

  @Test
  void a_wider_flange_needs_more_blank_and_strains_its_edge_more() {
    assertThat(ordinary(500))
        .allSatisfy(
            draw -> {
              var narrow = draw.section();
              var wide = draw.wider(1.02).section();
              assertThat(wide.blankBeyondTangentMm()).isGreaterThan(narrow.blankBeyondTangentMm());
              assertThat(strain(wide)).isGreaterThan(strain(narrow));
              assertThat(gather(wide)).isGreaterThan(gather(narrow));
            });
  }

  @Test
  void a_flatter_contour_strains_the_edge_less() {
    assertThat(ordinary(500))
        .allSatisfy(
            draw -> {
              var tight = draw.section();
              var flat = draw.flatter(1.02).section();
              assertThat(strain(flat)).isLessThan(strain(tight));
              assertThat(gather(flat)).isLessThan(gather(tight));
            });
  }

  @Test
  void up_to_a_right_angle_a_further_turn_strains_the_edge_more() {
    assertThat(ordinary(500))
        .allSatisfy(
            draw -> {
              var less = draw.section();
              var more = draw.turnedFurther(1.02).section();
              assertThat(strain(more)).isGreaterThan(strain(less));
              assertThat(gather(more)).isGreaterThan(gather(less));
            });
  }

  @Test
  void as_the_contour_straightens_shrink_and_stretch_become_the_same_but_for_the_sign() {
    assertThat(ordinary(500))
        .allSatisfy(
            draw -> {
              double near = apart(draw.flatter(100));
              double far = apart(draw.flatter(1000));
              // They differ by the order of W/R: ten times the radius, a tenth of the difference.
              assertThat(far).isLessThan(0.101 * near);
            });
  }

  /** The difference of the edge strains' sizes and of the blanks, as a share of either. */
  private static double apart(Draw draw) {
    var shrink = draw.as(FlangeKind.SHRINK).section();
    var stretch = draw.as(FlangeKind.STRETCH).section();
    double strain = Math.abs(strain(stretch) / strain(shrink) - 1);
    double blank = Math.abs(stretch.blankBeyondTangentMm() / shrink.blankBeyondTangentMm() - 1);
    return Math.max(strain, blank);
  }

  @Test
  void in_another_unit_of_length_strains_are_the_same_and_lengths_convert() {
    // A formula that mixes a length with its square, or has a length hidden in a constant, fails.
    assertThat(ordinary(500))
        .allSatisfy(
            draw -> {
              var mm = draw.section();
              var other = draw.scaled(1 / 2.54).section();
              assertThat(other.edgeStrain()).isCloseTo(mm.edgeStrain(), withinPercentage(1e-9));
              assertThat(other.gatherMmPerMetre())
                  .isCloseTo(mm.gatherMmPerMetre(), withinPercentage(1e-9));
              assertThat(2.54 * other.blankBeyondTangentMm())
                  .isCloseTo(mm.blankBeyondTangentMm(), withinPercentage(1e-9));
              assertThat(2.54 * other.edgeThicknessMm())
                  .isCloseTo(mm.edgeThicknessMm(), withinPercentage(1e-9));
              assertThat(2.54 * other.setbackMm())
                  .isCloseTo(mm.setbackMm(), withinPercentage(1e-9));
            });
  }

  @Test
  void what_the_bench_measures_leads_back_to_what_was_computed() {
    assertThat(ordinary(500))
        .allSatisfy(
            draw -> {
              var section = draw.section();
              assertThat(EdgeGauge.strainOfThickness(section.edgeThicknessMm(), draw.sheet))
                  .isCloseTo(section.edgeStrain(), within(1e-12));
              double t = draw.sheet.thicknessMm();
              double part = draw.sheet.insideBendRadiusMm();
              double block = Springback.blockRadiusMm(part, t, 250, 70_000);
              assertThat(Springback.partRadiusMm(block, t, 250, 70_000))
                  .isCloseTo(part, withinPercentage(1e-8));
            });
  }

  @Test
  void shrinking_thickens_and_stretching_thins_and_the_volume_is_kept() {
    assertThat(ordinary(500))
        .allSatisfy(
            draw -> {
              var section = draw.section();
              double hoop = section.edgeStrain();
              double thickness = Math.log(section.edgeThicknessMm() / draw.sheet.thicknessMm());
              double width = -draw.sheet.widthShare() * hoop;
              assertThat(Math.signum(hoop)).isEqualTo(draw.kind == FlangeKind.SHRINK ? -1.0 : 1.0);
              assertThat(Math.abs(hoop + width + thickness)).isLessThan(1e-12);
            });
  }

  @Tag("trials")
  @Test
  void anything_within_the_ranges_gives_finite_numbers_or_a_refusal() throws Exception {
    var random = new Random(7);
    int refused = 0;
    for (int i = 0; i < 20_000; i++) {
      var draw = anything(random);
      FlangeSection section;
      try {
        section = draw.section();
      } catch (FormingException refusal) {
        refused++;
        continue;
      }
      for (RecordComponent figure : FlangeSection.class.getRecordComponents()) {
        if (figure.getType() == double.class) {
          double value = (double) figure.getAccessor().invoke(section);
          assertThat(value).as("%s of %s", figure.getName(), draw).isFinite();
        }
      }
      assertThat(section.edgeThicknessMm()).isPositive();
      assertThat(section.blankBeyondTangentMm()).isPositive();
    }
    assertThat(refused).isBetween(1_000, 19_000);
  }

  private static Draw anything(Random random) {
    return new Draw(
        random.nextBoolean() ? FlangeKind.SHRINK : FlangeKind.STRETCH,
        Math.exp(random.nextDouble(-5, 27)),
        new Sheet(
            random.nextDouble(0.1, 10),
            random.nextInt(5) == 0 ? 0 : random.nextDouble(0, 100),
            random.nextInt(5) == 0 ? 0 : random.nextDouble(0, 1),
            random.nextDouble(0.1, 5)),
        random.nextDouble(0.01, 500),
        random.nextDouble(0.001, 164.999));
  }

  private static double strain(FlangeSection section) {
    return Math.abs(section.edgeStrain());
  }

  private static double gather(FlangeSection section) {
    return Math.abs(section.gatherMmPerMetre());
  }
}
