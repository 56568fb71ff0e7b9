package dev.fillplane.job;

import com.github.kagkarlsson.scheduler.serializer.Serializer;
import java.nio.charset.StandardCharsets;

/** Writes the data of tasks as texts, which any later version can read. */
final class PlainText implements Serializer {

  @Override
  public byte[] serialize(Object data) {
    return data == null ? null : data.toString().getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public <T> T deserialize(Class<T> type, byte[] serialized) {
    return serialized == null || type == Void.class
        ? null
        : type.cast(new String(serialized, StandardCharsets.UTF_8));
  }
}
