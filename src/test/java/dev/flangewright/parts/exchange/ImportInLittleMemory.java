package dev.flangewright.parts.exchange;

import dev.flangewright.FlangewrightApplication;
import dev.flangewright.parts.MakeBuild;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryUsage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Imports 5,000 parts of two flanges with 40 stations each into the whole application, and exports
 * them again; run by hand under a small heap, see {@code docs/csv.md}:
 *
 * <pre>
 * java -Xmx256m -cp … dev.flangewright.parts.exchange.ImportInLittleMemory [parts] [stations]
 * </pre>
 *
 * <p>Prints seconds, file sizes and the most memory that was still in use after a collection. It is
 * no test: speed depends on the machine, and too little memory ends it with an error.
 */
final class ImportInLittleMemory {

  private static final int MIB = 1 << 20;

  private ImportInLittleMemory() {}

  public static void main(String[] arguments) throws IOException {
    int parts = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 5_000;
    int stations = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 40;
    Path folder = Files.createTempDirectory("flangewright-large");
    Path register = folder.resolve("register.csv");
    Path contours = folder.resolve("contours.csv");
    LargeRegister.write(register, contours, parts, stations);
    System.out.printf(
        "register.csv %d bytes, contours.csv %d bytes%n",
        Files.size(register), Files.size(contours));
    try (ConfigurableApplicationContext application =
        new SpringApplicationBuilder(FlangewrightApplication.class)
            .properties("server.port=0", "flangewright.data=" + folder)
            .run()) {
      AtomicLong peak = watchMemory();
      SignedIn.as("lead", Role.LEAD, () -> run(application, folder));
      System.out.printf(
          "heap limit %d MiB, most in use after a collection %d MiB%n",
          Runtime.getRuntime().maxMemory() / MIB, peak.get() / MIB);
    }
  }

  private static void run(ConfigurableApplicationContext application, Path folder) {
    RegisterFiles files =
        RegisterFiles.of(folder.resolve("register.csv"), folder.resolve("contours.csv"));
    long build = application.getBean(MakeBuild.class).named("Large hull", "").id();
    ImportRegister imports = application.getBean(ImportRegister.class);
    ExportRegister exports = application.getBean(ExportRegister.class);
    timed("preview", () -> print(imports.preview(build, files, Progress.UNSEEN)));
    timed("import", () -> print(imports.apply(build, files, Progress.UNSEEN).stored()));
    timed("preview again", () -> print(imports.preview(build, files, Progress.UNSEEN)));
    timed("export", () -> same(build, exports, folder));
  }

  private static void print(ImportPlan plan) {
    System.out.printf(
        "  %d problems, %d new parts, %d changes, contours %s%n",
        plan.problemCount(), plan.newPartCount(), plan.changeCount(), plan.contours());
  }

  private static void same(long build, ExportRegister exports, Path folder) {
    try {
      Path register = folder.resolve("register.out");
      try (OutputStream to = Files.newOutputStream(register)) {
        exports.register(build, to);
      }
      Path contours = folder.resolve("contours.out");
      try (OutputStream to = Files.newOutputStream(contours)) {
        exports.contours(build, to);
      }
      boolean same =
          Files.mismatch(register, folder.resolve("register.csv")) < 0
              && Files.mismatch(contours, folder.resolve("contours.csv")) < 0;
      System.out.println(same ? "  byte for byte the same" : "  NOT the same");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void timed(String what, Runnable work) {
    long begun = System.nanoTime();
    work.run();
    System.out.printf("%s: %.1f s%n", what, (System.nanoTime() - begun) / 1e9);
  }

  /** The largest sum, over the pools of the heap, of what a collection left. */
  private static AtomicLong watchMemory() {
    AtomicLong peak = new AtomicLong();
    Thread watch =
        new Thread(
            () -> {
              while (!Thread.currentThread().isInterrupted()) {
                long used = 0;
                for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
                  MemoryUsage left = pool.getCollectionUsage();
                  used += left == null ? 0 : left.getUsed();
                }
                peak.accumulateAndGet(used, Math::max);
                java.util.concurrent.locks.LockSupport.parkNanos(20_000_000);
              }
            },
            "memory");
    watch.setDaemon(true);
    watch.start();
    return peak;
  }
}
