package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Templates of others ask the network for nothing, whether the document comes about or not. */
class RemoteContentTest {
  private final AtomicInteger asked = new AtomicInteger();

  @TempDir private Path folder;
  private HttpServer server;

  @BeforeEach
  void listen() throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          asked.incrementAndGet();
          exchange.sendResponseHeaders(404, -1);
          exchange.close();
        });
    server.start();
  }

  @AfterEach
  void stop() {
    server.stop(0);
  }

  private String placed(String text) {
    return text.replace("URL", "http://127.0.0.1:" + server.getAddress().getPort() + "/x");
  }

  private void print(Documents documents, String template) {
    try {
      documents.render(template, List.of());
    } catch (TemplateProblem e) {
      assertEquals(0, asked.get(), e.getMessage());
    }
    assertEquals(0, asked.get());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "@import url(URL);",
        "p { background-image: url(URL) }",
        "p { list-style-image: url(URL) }",
        "p::before { content: url(URL) }",
        "@font-face { font-family: x; src: url(URL) } p { font-family: x }"
      })
  void aStylesheetLoadsNothing(String css) {
    print(new Documents(folder).file("theme/print.css", placed(css)), "text");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<p style=\"background-image: url(URL)\">x</p>",
        "<object data=\"URL\">x</object>",
        "<iframe src=\"URL\"></iframe>",
        "<embed src=\"URL\">",
        "<img src=\"URL\" alt=\"x\">",
        "<svg><image href=\"URL\"/></svg>",
        "<svg><use href=\"URL#a\"/></svg>"
      })
  void aTemplateLoadsNothing(String template) {
    print(new Documents(folder), placed(template));
  }

  @Test
  void aLinkIsNotFollowed() {
    print(new Documents(folder), placed("[x](URL)"));
  }
}
