package dev.flangewright.parts.exchange;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** Writes down what an import would do, in full for the fingerprint and in part for reading. */
final class PlanSheet {

  private static final int LISTED = 200;

  private final List<Change> changes = new ArrayList<>();
  private final List<String> newParts = new ArrayList<>();
  private final MessageDigest effect = sha256();
  private Counts register = Counts.NONE;
  private Counts contours = Counts.NONE;
  private int changeCount;
  private int newPartCount;

  void newPart(String number) {
    newPartCount++;
    note("part", number);
    if (newParts.size() < LISTED) {
      newParts.add(number);
    }
  }

  void change(Change change) {
    changeCount++;
    note(change.part(), change.flange(), change.field(), change.was(), change.becomes());
    if (changes.size() < LISTED) {
      changes.add(change);
    }
  }

  void row(boolean isNew, boolean isChanged) {
    register = register.oneMore(isNew, isChanged);
  }

  void contour(FlangeKey flange, String text, boolean isNew, boolean isChanged) {
    contours = contours.oneMore(isNew, isChanged);
    if (isNew || isChanged) {
      note(flange.partNumber(), flange.flange(), text);
    }
  }

  private void note(String... words) {
    for (String word : words) {
      effect.update(word.getBytes(StandardCharsets.UTF_8));
      effect.update((byte) 0);
    }
  }

  /** Call once. */
  ImportPlan plan(Problems problems, List<String> notices) {
    return new ImportPlan(
        register,
        contours,
        newPartCount,
        List.copyOf(newParts),
        changeCount,
        List.copyOf(changes),
        problems.count(),
        problems.inOrder(),
        List.copyOf(notices),
        HexFormat.of().formatHex(effect.digest()));
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
