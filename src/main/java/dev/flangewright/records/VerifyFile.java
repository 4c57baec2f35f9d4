package dev.flangewright.records;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Looks through an exported journal. It needs the file and a Java runtime, and nothing else: no
 * database, no settings, no library.
 */
public final class VerifyFile {

  /** The word that calls it from the command line. */
  public static final String COMMAND = "verify-journal";

  static final int SOUND = 0;
  static final int BROKEN = 1;
  static final int NOT_UNDERSTOOD = 2;

  private VerifyFile() {}

  public static void main(String[] args) {
    System.exit(of(List.of(args), System.out));
  }

  /**
   * @param args the file and, if there is one, a checkpoint taken before, as one word or several
   * @return 0 if all fits and the checkpoint is contained, 1 if not, 2 if there was nothing to look
   *     through
   */
  public static int of(List<String> args, PrintStream out) {
    if (args.isEmpty()) {
      out.println("Usage: " + COMMAND + " FILE [CHECKPOINT]");
      return NOT_UNDERSTOOD;
    }
    String text = String.join(" ", args.subList(1, args.size()));
    Optional<Checkpoint> old = Checkpoint.read(text);
    if (!text.isBlank() && old.isEmpty()) {
      out.println("This is no checkpoint: " + text);
      return NOT_UNDERSTOOD;
    }
    try {
      return file(Path.of(args.get(0)), old.orElse(null), out);
    } catch (IOException | UncheckedIOException | InvalidPathException unreadable) {
      out.println("The file cannot be read as a journal: " + unreadable);
      return NOT_UNDERSTOOD;
    }
  }

  private static int file(Path file, @Nullable Checkpoint old, PrintStream out) throws IOException {
    Ending ending = Ending.of(file);
    Checkpoint claimed = Checkpoint.readLine(ending.last()).orElse(null);
    if (claimed == null) {
      out.println("The file does not end with its checkpoint: it was cut off, or is no journal.");
      return BROKEN;
    }
    try (Stream<String> lines = Files.lines(file)) {
      Verdict verdict =
          VerifyJournal.of(
              lines.limit(ending.entries()).map(Link::inFile).iterator(), claimed, old);
      return say(verdict, old, ending.entries() > claimed.count(), out);
    }
  }

  private static int say(Verdict verdict, @Nullable Checkpoint old, boolean more, PrintStream out) {
    out.println(verdict.chain() + ": " + verdict.sentence());
    out.println("The last that fits has the hash " + verdict.head());
    if (old != null) {
      out.println(verdict.oldSentence());
    }
    if (more) {
      out.println("More entries follow than the file says it has.");
    }
    return verdict.isSound() && !more ? SOUND : BROKEN;
  }

  /**
   * How a file ends.
   *
   * @param entries lines before the last
   */
  private record Ending(long entries, String last) {

    static Ending of(Path file) throws IOException {
      long count = 0;
      String last = "";
      try (Stream<String> lines = Files.lines(file)) {
        for (String line : (Iterable<String>) lines::iterator) {
          count++;
          last = line;
        }
      }
      return new Ending(Math.max(0, count - 1), last);
    }
  }
}
