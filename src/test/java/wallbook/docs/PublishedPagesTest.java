package wallbook.docs;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import wallbook.Approval;
import wallbook.read.SchemaWriter;

/**
 * The pages under {@code docs} that are made from the program say what the program does. After a
 * change, {@code mvn -q test -Dtest=PublishedPagesTest -Dapprove=true} writes them anew.
 */
class PublishedPagesTest {
  @Test
  void schemaIsThatOfTheRecord() {
    Approval.verifyPage("job-record.schema.json", SchemaWriter.schema());
  }

  @Test
  void referenceHasEveryKeyOfTheRecord() {
    Approval.verifyPage("record-reference.md", RecordReference.page());
  }

  @Test
  void findingsPageExplainsEveryKind() throws IOException {
    Approval.verifyPage("findings.md", FindingsPage.page());
  }
}
