package wallbook.render;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;

/**
 * What the layout engine complains of while one document is made. The engine would print it; here a
 * complaint is a fault of the template or stylesheet, and nothing is printed.
 */
final class EngineLog implements Consumer<Diagnostic> {
  static {
    XRLog.setLoggerImpl(new Silent());
  }

  private static final String OF_STYLESHEET = "(#inline_style_1) ";

  private final List<String> complaints = new ArrayList<>();

  @Override
  public void accept(Diagnostic diagnostic) {
    if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
      complaints.add(diagnostic.getFormattedMessage().strip());
    }
  }

  void throwFirst(String template) throws TemplateProblem {
    if (!complaints.isEmpty()) {
      String first = complaints.get(0);
      String file = first.startsWith(OF_STYLESHEET) ? Theme.STYLESHEET : template;
      throw new TemplateProblem(file, "it can't be printed: " + first.replace(OF_STYLESHEET, ""));
    }
  }

  private static final class Silent implements XRLogger {
    @Override
    public void setLevel(String logger, Level level) {}

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
      return false;
    }

    @Override
    public void log(Diagnostic diagnostic) {}

    @Override
    public void log(String where, Level level, String message) {}

    @Override
    public void log(String where, Level level, String message, Throwable error) {}
  }
}
