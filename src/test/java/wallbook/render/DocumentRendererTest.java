package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocumentRendererTest {
  @TempDir private Path folder;

  @Test
  void aManualIsAnAccessibleArchive() throws TemplateProblem {
    VeraPdf.assertAccessibleArchive(manual().pdf());
  }

  @Test
  void theSameInputGivesTheSameBytes() throws TemplateProblem {
    assertArrayEquals(manual().pdf(), manual().pdf());
  }

  private RenderedDocument manual() throws TemplateProblem {
    return new Documents(folder)
        .with(ManualSample.PLAN)
        .render(ManualSample.TEMPLATE, ManualSample.view(3, 30));
  }
}
