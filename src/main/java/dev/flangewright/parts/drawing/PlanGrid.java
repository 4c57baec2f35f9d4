package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Fit;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Scale;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;

/** The axes of the frame as a square grid in mm, and a scale bar of one square. */
record PlanGrid(Box field, double foot, Fit fit) {

  private static final int SQUARES_ACROSS = 5;
  private static final double LEFT = 108;

  void draw(Svg svg) {
    Box ground = new Box(field.minX() - 16, field.minY() - 16, field.maxX() + 16, foot);
    double step = Scale.roundStep(ground.width() / fit.scale() / SQUARES_ACROSS);
    for (double x = first(ground.minX() - fit.origin().x(), step);
        xAt(x) <= ground.maxX();
        x += step) {
      svg.path("d-grid", vertical(xAt(x), ground));
      svg.quiet(new Spot(xAt(x), ground.maxY() + 26), Anchor.MIDDLE, Numbers.figure(x, 0));
    }
    for (double y = first(fit.origin().y() - ground.maxY(), step);
        yAt(y) >= ground.minY();
        y += step) {
      svg.path("d-grid", horizontal(yAt(y), ground));
      svg.quiet(new Spot(ground.minX() - 8, yAt(y) + 6), Anchor.END, Numbers.figure(y, 0));
    }
    scaleBar(svg, step);
  }

  private double first(double paper, double step) {
    return Math.ceil(paper / fit.scale() / step - 1e-9) * step;
  }

  private double xAt(double mm) {
    return fit.at(mm, 0).x();
  }

  private double yAt(double mm) {
    return fit.at(0, mm).y();
  }

  private static String vertical(double x, Box ground) {
    return Lines.open(new Spot(x, ground.minY()), new Spot(x, ground.maxY()));
  }

  private static String horizontal(double y, Box ground) {
    return Lines.open(new Spot(ground.minX(), y), new Spot(ground.maxX(), y));
  }

  private void scaleBar(Svg svg, double step) {
    double y = foot + 128;
    Spot from = new Spot(LEFT, y);
    Spot to = new Spot(LEFT + step * fit.scale(), y);
    Spot down = new Spot(0, 1);
    svg.path(
        "d-scale",
        Lines.open(from.moved(down, -6), from.moved(down, 6))
            + Lines.open(from, to)
            + Lines.open(to.moved(down, -6), to.moved(down, 6)));
    svg.label(
        new Spot(to.x() + 14, y + 6),
        Anchor.START,
        Numbers.figure(step, 0) + " mm; axes of the frame, y up");
  }
}
