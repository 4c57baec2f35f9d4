package dev.flangewright.forming;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** Whole parts of two flanges, from the stations to the flat outline, on one thread. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 10, time = 1)
public class PartBenchmark {

  private final LoftedPart large = LoftedPart.of(400, 0);
  private final List<LoftedPart> thousand =
      IntStream.range(0, 1000).mapToObj(i -> LoftedPart.of(40, i * 0.37)).toList();

  /** 400 stations on each flange. */
  @Benchmark
  public Object onePartOf400Stations() {
    return large.worked();
  }

  /** A thousand different parts, 40 stations on each flange. */
  @Benchmark
  public void thousandPartsOf40Stations(Blackhole hole) {
    thousand.forEach(part -> hole.consume(part.worked()));
  }
}
