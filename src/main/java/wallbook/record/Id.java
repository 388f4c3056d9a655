package wallbook.record;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks the id of a thing: letters, digits, dots, hyphens and underscores, at most {@value
 * #LONGEST} characters, unique in the whole record.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Id {
  /** Kind of the thing that has the id. */
  Kind value();

  /** Form of every id. */
  String FORM = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";

  /** Most characters an id may have. */
  int LONGEST = 64;
}
