package dev.flangewright.forming;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Stations analysed per second: every figure of a flange of 40 stations; of the same stations the
 * blank and strain alone; and these by step-by-step integration, the reference.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 10, time = 1)
public class StationBenchmark {

  static final int STATIONS = 40;

  private final Contour contour = Contour.of(LoftedPart.of(STATIONS, 0).outer());
  private final List<StepByStep> sections =
      LoftedPart.figures(contour).stations().stream().map(StationBenchmark::section).toList();

  private static StepByStep section(StationFigures station) {
    return new StepByStep(
        +1,
        station.section().tangentRadiusMm(),
        LoftedPart.SHEET,
        Math.toRadians(station.bendAngleDeg()),
        station.flatWidthMm());
  }

  @Benchmark
  @OperationsPerInvocation(STATIONS)
  public Object library() {
    return LoftedPart.figures(contour);
  }

  @Benchmark
  @OperationsPerInvocation(STATIONS)
  public double development() {
    return sections.stream().mapToDouble(s -> s.inClosedForm().strain()).min().getAsDouble();
  }

  @Benchmark
  @OperationsPerInvocation(STATIONS)
  public double reference() {
    return sections.stream().mapToDouble(StepByStep::edgeStrain).min().getAsDouble();
  }
}
