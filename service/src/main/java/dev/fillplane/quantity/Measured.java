package dev.fillplane.quantity;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The dimension of a record component that holds one number, an optional number or an array of
 * numbers. The value is in SI; readers and writers of JSON convert it, nobody else does.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({
  ElementType.RECORD_COMPONENT,
  ElementType.FIELD,
  ElementType.METHOD,
  ElementType.PARAMETER
})
public @interface Measured {
  /** What the number measures. */
  Dimension value();
}
