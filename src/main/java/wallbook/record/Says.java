package wallbook.record;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a field of the record says, and an example; the schema and the reference are made from it.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Says {
  /** One sentence for somebody filling in the record. */
  String value();

  /** A value as it would be written in the file; empty if the words speak for themselves. */
  String example() default "";
}
