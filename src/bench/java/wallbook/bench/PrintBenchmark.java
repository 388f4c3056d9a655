package wallbook.bench;

import java.nio.file.Path;
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
import wallbook.compose.DocumentPlan;
import wallbook.render.DocumentRenderer;
import wallbook.render.RenderedDocument;

/**
 * Whole documents of the sample house, from the view model to the PDF, beside the floor: the same
 * rows and rules drawn straight by the PDF library, in a warm process.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class PrintBenchmark {
  private static final Path RECORD = Path.of("sample-jobs/lakeside/job.yaml");

  @Param({"technician-as-built.pdf", "homeowner-manual.pdf", "label-map.pdf"})
  private String document;

  private MeasuredHouse house;
  private Composition composition;
  private DocumentRenderer renderer;
  private DocumentPlan plan;
  private Rows rows;
  private RowsFloor floor;

  @Setup
  public void build() {
    house = MeasuredHouse.of(RECORD);
    composition = house.composition();
    renderer = house.renderer();
    plan = MeasuredHouse.plan(document);
    rows = Rows.of(house.html(renderer, plan, composition));
    floor = new RowsFloor();
  }

  @Benchmark
  public RenderedDocument print() {
    return house.print(renderer, plan, composition);
  }

  @Benchmark
  public byte[] floor() {
    return floor.draw(rows);
  }
}
