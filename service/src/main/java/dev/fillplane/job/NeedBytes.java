package dev.fillplane.job;

import dev.fillplane.estimate.UnitNeed;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** The need of a unit as it is kept. */
final class NeedBytes {

  private NeedBytes() {}

  static byte[] of(UnitNeed need) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeUTF(need.material());
      out.writeUTF(need.name().orElse(""));
      out.writeDouble(need.bagMass());
      out.writeDouble(need.waterPerBag());
      out.writeDouble(need.primer());
      out.writeDouble(need.confidence());
      out.writeInt(need.order());
      out.writeInt(need.needs().length);
      for (double bags : need.needs()) {
        out.writeDouble(bags);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  static UnitNeed read(byte[] bytes) {
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      String material = in.readUTF();
      String name = in.readUTF();
      double bagMass = in.readDouble();
      double waterPerBag = in.readDouble();
      double primer = in.readDouble();
      double confidence = in.readDouble();
      int order = in.readInt();
      double[] needs = new double[in.readInt()];
      for (int i = 0; i < needs.length; i++) {
        needs[i] = in.readDouble();
      }
      Optional<String> told = name.isEmpty() ? Optional.empty() : Optional.of(name);
      return new UnitNeed(material, told, bagMass, waterPerBag, primer, confidence, order, needs);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
