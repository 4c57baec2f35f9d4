package dev.flangewright.drawing;

import java.util.ArrayList;
import java.util.List;

/** An axis: values from a range laid on the paper, with round values to mark. */
public record Scale(double from, double to, double paperFrom, double paperTo) {

  public double at(double value) {
    double range = to - from;
    double share = range == 0 ? 0 : (value - from) / range;
    return paperFrom + share * (paperTo - paperFrom);
  }

  /** Round values inside the range, about as many as wanted. */
  public List<Double> marks(int wanted) {
    double step = roundStep((to - from) / wanted);
    var marks = new ArrayList<Double>();
    for (double n = Math.ceil(from / step - 1e-9); n * step <= to + step * 1e-9; n++) {
      marks.add(n * step);
    }
    return List.copyOf(marks);
  }

  /** Decimals that tell round values of this step apart. */
  public int decimals(int wanted) {
    return (int) Math.max(0, Math.ceil(-Math.log10(roundStep((to - from) / wanted)) - 1e-9));
  }

  /** The smallest 1, 2 or 5 times a power of ten that is not below a step. */
  public static double roundStep(double step) {
    if (!(step > 0)) {
      return 1;
    }
    double power = Math.pow(10, Math.floor(Math.log10(step)));
    double share = step / power;
    double round = share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10;
    return round * power;
  }
}
