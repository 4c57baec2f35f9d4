package dev.flangewright.forming;

import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The fair curve through a superellipse read with 0.3 mm of scatter, tolerance 0.6 mm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 10, time = 1)
public class FairFitBenchmark {

  @Param({"40", "400"})
  private int stations;

  private List<Station> read;

  @Setup
  public void digitise() {
    var points = Shape.SUPERELLIPSE.points(Shape.SUPERELLIPSE.even(stations));
    read = Shape.read(Shape.scattered(points, new Random(1943), 0.3));
  }

  @Benchmark
  public Object fairCurve() {
    return FairFit.of(read, 0.6);
  }
}
