package wallbook.picture;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The two forms of picture file that documents take. */
enum PictureForm {
  JPEG("jpeg", List.of(0xFF, 0xD8, 0xFF)),
  PNG("png", List.of(0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A));

  private final String reader;
  private final List<Integer> firstBytes;

  PictureForm(String reader, List<Integer> firstBytes) {
    this.reader = reader;
    this.firstBytes = firstBytes;
  }

  /** Name of the form among the platform's readers and writers. */
  String reader() {
    return reader;
  }

  /** The form that a file's first bytes tell; its name may say what it likes. */
  static Optional<PictureForm> of(byte[] file) {
    return Arrays.stream(values()).filter(form -> form.begins(file)).findFirst();
  }

  private boolean begins(byte[] file) {
    for (int i = 0; i < firstBytes.size(); i++) {
      if (i >= file.length || (file[i] & 0xFF) != firstBytes.get(i)) {
        return false;
      }
    }
    return true;
  }
}
