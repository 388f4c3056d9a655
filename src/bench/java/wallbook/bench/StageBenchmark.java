package wallbook.bench;

import java.util.List;
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
import wallbook.compose.Composition;
import wallbook.finding.Finding;
import wallbook.read.ReadResult;
import wallbook.record.Job;

/** The stages before printing, over invented houses of growing size, in a warm process. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class StageBenchmark {
  @Param({"200", "2000", "10000"})
  private int runs;

  private MeasuredHouse house;
  private Job job;
  private List<Finding> findings;
  private Composition composition;

  @Setup
  public void build() {
    house = MeasuredHouse.invented(runs);
    job = house.job();
    findings = house.check(job);
    composition = house.assess(job, findings);
  }

  @Benchmark
  public ReadResult read() {
    return house.read();
  }

  @Benchmark
  public List<Finding> check() {
    return house.check(job);
  }

  @Benchmark
  public Composition assess() {
    return house.assess(job, findings);
  }

  @Benchmark
  public Composition readCheckAssess() {
    return house.composition();
  }

  @Benchmark
  public List<Object> compose() {
    return house.compose(composition);
  }

  @Benchmark
  public List<byte[]> labels() {
    return house.labels(job);
  }

  @Benchmark
  public byte[] page() {
    return house.page(composition);
  }
}
