package dev.fillplane.app;

import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.encoder.EncoderBase;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import org.slf4j.event.KeyValuePair;

/**
 * One JSON object a line: {@code time}, {@code level}, {@code logger}, {@code message}, then what
 * the event adds by name, then {@code fault} with its stack. Names are flat, numbers are numbers.
 */
final class JsonLines extends EncoderBase<ILoggingEvent> {

  private static final byte[] NONE = {};
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);

  private final JsonFactory json = new JsonFactory();

  @Override
  public byte[] headerBytes() {
    return NONE;
  }

  @Override
  public byte[] encode(ILoggingEvent event) {
    ByteArrayOutputStream line = new ByteArrayOutputStream(256);
    try (JsonGenerator out = json.createGenerator(line)) {
      write(event, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    line.write('\n');
    return line.toByteArray();
  }

  private static void write(ILoggingEvent event, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField("time", TIME.format(Instant.ofEpochMilli(event.getTimeStamp())));
    out.writeStringField("level", event.getLevel().toString());
    out.writeStringField("logger", event.getLoggerName());
    out.writeStringField("message", event.getFormattedMessage());
    List<KeyValuePair> pairs = event.getKeyValuePairs();
    for (KeyValuePair pair : pairs == null ? List.<KeyValuePair>of() : pairs) {
      out.writeFieldName(pair.key);
      writeValue(pair.value, out);
    }
    for (Map.Entry<String, String> pair : event.getMDCPropertyMap().entrySet()) {
      out.writeStringField(pair.getKey(), pair.getValue());
    }
    if (event.getThrowableProxy() != null) {
      out.writeStringField("fault", ThrowableProxyUtil.asString(event.getThrowableProxy()));
    }
    out.writeEndObject();
  }

  private static void writeValue(Object value, JsonGenerator out) throws IOException {
    if (value instanceof Integer || value instanceof Long) {
      out.writeNumber(((Number) value).longValue());
    } else if (value instanceof Double number) {
      out.writeNumber(number);
    } else {
      out.writeString(String.valueOf(value));
    }
  }

  @Override
  public byte[] footerBytes() {
    return NONE;
  }
}
