package wallbook.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One run of the program within a test. */
record Cli(int exitCode, String out, String err) {
  static Cli run(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] texts = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      texts[i] = args[i].toString();
    }
    int exitCode = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), false, texts);
    return new Cli(
        exitCode, out.toString().replace("\r\n", "\n"), err.toString().replace("\r\n", "\n"));
  }
}
