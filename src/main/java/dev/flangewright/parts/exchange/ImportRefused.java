package dev.flangewright.parts.exchange;

import dev.flangewright.people.Refused;

/** Files that cannot be imported; nothing of them is stored. */
public class ImportRefused extends Refused {

  private static final long serialVersionUID = 1L;

  private final transient ImportPlan plan;

  public ImportRefused(ImportPlan plan) {
    super(Kind.UNACCEPTABLE, sentence(plan));
    this.plan = plan;
  }

  private static String sentence(ImportPlan plan) {
    int count = plan.problemCount();
    return (count == 1 ? "There is 1 problem" : "There are " + count + " problems")
        + " in the files; nothing was stored. The first: "
        + plan.problems().get(0).sentence();
  }

  /** With every problem. */
  public ImportPlan plan() {
    return plan;
  }
}
