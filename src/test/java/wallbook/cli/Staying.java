package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.Writer;

/** A run of the program that stays until it is closed, in a thread of its own. */
final class Staying implements AutoCloseable {
  private final Said out = new Said();
  private final Said err = new Said();
  private final Thread thread;

  Staying(Object... options) {
    String[] texts = new String[options.length];
    for (int i = 0; i < options.length; i++) {
      texts[i] = options[i].toString();
    }
    thread =
        new Thread(
            () -> {
              Main.run(new PrintWriter(out, true), new PrintWriter(err, true), false, texts);
              out.end();
            },
            "run that stays");
    thread.start();
  }

  /** All that was said as soon as it has a text so many times, in whole lines. */
  String await(String text, int times) throws InterruptedException {
    String said = out.until(text, times);
    assertTrue(count(text, said) >= times, () -> "it ended: " + said + err);
    return said;
  }

  String said() {
    return out.toString();
  }

  String errors() {
    return err.toString();
  }

  static int count(String text, String in) {
    int times = 0;
    for (int at = in.indexOf(text); at >= 0; at = in.indexOf(text, at + 1)) {
      times++;
    }
    return times;
  }

  @Override
  public void close() {
    thread.interrupt();
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** What is said, for whoever waits until it is. */
  private static final class Said extends Writer {
    private final StringBuilder text = new StringBuilder();
    private boolean ended;

    /** The text as soon as it has another text so many times, or nothing follows any more. */
    synchronized String until(String part, int times) throws InterruptedException {
      while (!ended && !(count(part, toString()) >= times && toString().endsWith("\n"))) {
        wait();
      }
      return toString();
    }

    synchronized void end() {
      ended = true;
      notifyAll();
    }

    @Override
    public synchronized void write(char[] characters, int offset, int length) {
      text.append(characters, offset, length);
      notifyAll();
    }

    @Override
    public void flush() {
      // Nothing is held back.
    }

    @Override
    public void close() {
      // Nothing is open.
    }

    @Override
    public synchronized String toString() {
      return text.toString().replace("\r\n", "\n");
    }
  }
}
