package dev.flangewright.records;

/** Names of the journal's chains: one a build, and one for what belongs to no build. */
public final class Chains {

  /** Of accounts, scrap causes, and the builds themselves. */
  public static final String INSTALLATION = "installation";

  private Chains() {}

  public static String ofBuild(long buildId) {
    return "build-" + buildId;
  }
}
