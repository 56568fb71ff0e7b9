package dev.fillplane.web.json;

import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.Unit;
import dev.fillplane.quantity.UnitSystem;

/**
 * Gives each {@link Measured} component the reader and writer of its dimension, and each enum
 * constant its word.
 */
final class MeasuredIntrospector extends JacksonAnnotationIntrospector {

  private static final long serialVersionUID = 1;

  private final UnitSystem system;

  MeasuredIntrospector(UnitSystem system) {
    this.system = system;
  }

  @Override
  public Object findSerializer(Annotated annotated) {
    Measured measured = annotated.getAnnotation(Measured.class);
    return measured == null ? super.findSerializer(annotated) : writer(measured.value());
  }

  @Override
  public Object findDeserializer(Annotated annotated) {
    Measured measured = annotated.getAnnotation(Measured.class);
    return measured == null
        ? super.findDeserializer(annotated)
        : reader(annotated.getRawType(), measured.value());
  }

  private Object writer(Dimension dimension) {
    return dimension == Dimension.FILL_PRICE
        ? new PriceWriter(unit(dimension))
        : new QuantityWriter(unit(dimension));
  }

  private Object reader(Class<?> type, Dimension dimension) {
    return dimension == Dimension.FILL_PRICE
        ? new PriceReader(unit(dimension))
        : QuantityReader.of(type, unit(dimension));
  }

  @Override
  public String[] findEnumValues(
      MapperConfig<?> config, AnnotatedClass type, Enum<?>[] constants, String[] names) {
    for (int i = 0; i < constants.length; i++) {
      names[i] = Words.of(constants[i]);
    }
    return names;
  }

  private Unit unit(Dimension dimension) {
    return dimension.unit(system);
  }
}
