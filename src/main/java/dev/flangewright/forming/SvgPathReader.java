package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;

/**
 * Carries out the commands of path data, in the axes of the SVG (y down).
 *
 * <p>Source: W3C SVG 2, section 9.3: repeated arguments, lines after a move, reflected control
 * points of S and T, and section 9.5.1 for arcs with equal ends or a zero radius.
 */
final class SvgPathReader {

  private static final double FARTHEST_MM = 100_000;

  private final SvgPathText text;
  private final List<PathPart> parts = new ArrayList<>();
  private Point start = new Point(0, 0);
  private Point here = start;
  private Point control = start;
  private char before = ' ';

  SvgPathReader(String pathData) {
    this.text = new SvgPathText(pathData);
  }

  List<PathPart> parts() {
    move();
    while (!text.ended()) {
      int position = text.position();
      char command = text.command();
      if (Character.toUpperCase(command) == 'M' || before == 'Z') {
        throw new SvgPathException(position, "a contour is one line, without a second part");
      }
      repeat(command);
    }
    if (parts.isEmpty()) {
      throw new SvgPathException(text.position(), "the path has no length");
    }
    return parts;
  }

  private void move() {
    text.skipSpace();
    int position = text.position();
    char command = text.command();
    if (Character.toUpperCase(command) != 'M') {
      throw new SvgPathException(position, "a path begins with M or m");
    }
    text.skipSpace();
    start = point(false);
    here = start;
    before = 'M';
    if (text.numberFollows()) {
      repeatNumbers(command == 'm' ? 'l' : 'L');
    }
  }

  private void repeat(char command) {
    if (Character.toUpperCase(command) == 'Z') {
      line(start);
      before = 'Z';
    } else {
      text.skipSpace();
      repeatNumbers(command);
    }
  }

  private void repeatNumbers(char command) {
    do {
      draw(Character.toUpperCase(command), Character.isLowerCase(command));
      before = Character.toUpperCase(command);
    } while (text.numberFollows());
  }

  private void draw(char command, boolean relative) {
    switch (command) {
      case 'H' -> line(new Point(coordinate(relative ? here.xMm() : 0), here.yMm()));
      case 'V' -> line(new Point(here.xMm(), coordinate(relative ? here.yMm() : 0)));
      case 'L' -> line(point(relative));
      case 'C' -> cubic(point(relative), nextPoint(relative), nextPoint(relative));
      case 'S' -> cubic(reflected("CS"), point(relative), nextPoint(relative));
      case 'Q' -> quadratic(point(relative), nextPoint(relative));
      case 'T' -> quadratic(reflected("QT"), point(relative));
      default -> arc(relative);
    }
  }

  private void line(Point end) {
    add(List.of(here, end));
  }

  private void cubic(Point first, Point second, Point end) {
    add(List.of(here, first, second, end));
    control = second;
  }

  private void quadratic(Point first, Point end) {
    add(List.of(here, first, end));
    control = first;
  }

  private void add(List<Point> controls) {
    if (controls.stream().anyMatch(point -> !point.equals(here))) {
      parts.add(new PathPart.Bezier(controls));
    }
    here = controls.get(controls.size() - 1);
  }

  private void arc(boolean relative) {
    double rx = text.number();
    text.skipSeparator();
    double ry = text.number();
    text.skipSeparator();
    double turn = Math.toRadians(text.number() % 360);
    text.skipSeparator();
    boolean large = text.flag();
    text.skipSeparator();
    boolean sweep = text.flag();
    int position = text.position();
    var end = nextPoint(relative);
    if (rx == 0 || ry == 0) {
      line(end);
    } else if (!end.equals(here)) {
      var arc = PathPart.Arc.between(here, end, rx, ry, turn, large, sweep);
      if (!(arc.rx() <= 1e9 && arc.ry() <= 1e9 && arc.rx() >= 1e-9 && arc.ry() >= 1e-9)) {
        throw new SvgPathException(position, "the radii of the arc are too large or too small");
      }
      parts.add(arc);
      here = end;
    }
  }

  private Point reflected(String after) {
    return after.indexOf(before) >= 0
        ? new Point(2 * here.xMm() - control.xMm(), 2 * here.yMm() - control.yMm())
        : here;
  }

  private Point nextPoint(boolean relative) {
    text.skipSeparator();
    return point(relative);
  }

  private Point point(boolean relative) {
    double x = coordinate(relative ? here.xMm() : 0);
    text.skipSeparator();
    return new Point(x, coordinate(relative ? here.yMm() : 0));
  }

  private double coordinate(double from) {
    int position = text.position();
    double value = from + text.number();
    if (Math.abs(value) > FARTHEST_MM) {
      throw new SvgPathException(position, "coordinates must lie within 100 m of the origin");
    }
    return value;
  }
}
