package dev.flangewright.forming;

import java.util.Collection;
import java.util.Locale;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks of the forming model and sets the library against its reference. */
public final class Benchmarks {

  private Benchmarks() {}

  /**
   * @param args as JMH takes them; none for everything
   */
  public static void main(String... args) throws RunnerException, CommandLineOptionException {
    var options =
        new OptionsBuilder()
            .parent(new CommandLineOptions(args))
            .shouldFailOnError(true)
            .addProfiler(GCProfiler.class)
            .build();
    var results = new Runner(options).run();
    double reference = best(results, "StationBenchmark.reference");
    report("every figure", best(results, "StationBenchmark.library") / reference);
    report("blank and strain", best(results, "StationBenchmark.development") / reference);
  }

  private static void report(String what, double ratio) {
    System.out.printf(
        Locale.ROOT, "Stations per second over step-by-step integration, %s: %.1f%n", what, ratio);
  }

  /**
   * The best iteration, the one least disturbed by what else runs on the machine; not a number when
   * the benchmark was left out.
   */
  private static double best(Collection<RunResult> results, String name) {
    return results.stream()
        .filter(result -> result.getParams().getBenchmark().endsWith(name))
        .mapToDouble(result -> result.getPrimaryResult().getStatistics().getMax())
        .findFirst()
        .orElse(Double.NaN);
  }
}
