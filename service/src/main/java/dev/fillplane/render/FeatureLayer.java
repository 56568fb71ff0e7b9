package dev.fillplane.render;

import dev.fillplane.bay.Joint;
import dev.fillplane.bay.JointKind;
import dev.fillplane.bay.KeptOpen;
import dev.fillplane.room.Position;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/** Planned joints away from doorways, and what is kept open. */
final class FeatureLayer {

  private final Sheet sheet;
  private final List<Joint> joints;

  FeatureLayer(Sheet sheet) {
    this.sheet = sheet;
    joints =
        sheet.plan().pour().joints().stream()
            .filter(joint -> joint.kind() != JointKind.DOORWAY)
            .toList();
  }

  boolean hasJoints() {
    return !joints.isEmpty();
  }

  boolean hasOpenings() {
    return sheet.plan().preparation().keepOpen().stream()
        .anyMatch(kept -> kept.outline().isPresent());
  }

  Markup draw() {
    Markup svg = new Markup();
    for (Joint joint : joints) {
      Symbols.joint(svg, at(joint.from()), at(joint.to()));
      sheet.labels().block(at(joint.from()), at(joint.to()), 4);
    }
    for (KeptOpen kept : sheet.plan().preparation().keepOpen()) {
      kept.outline()
          .ifPresent(
              outline -> {
                PathData path = new PathData();
                outline.rings().forEach(ring -> path.ring(sheet.view(), ring));
                svg.leaf("path", "d", path, "fill", "#fff");
                svg.leaf(
                    "path",
                    "d",
                    path,
                    "fill",
                    "url(#" + RoomLayer.ISLAND + ")",
                    "stroke",
                    "#111",
                    "stroke-width",
                    2);
              });
    }
    return svg;
  }

  void label() {
    for (Joint joint : joints) {
      String text = joint.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
      Coordinate from = at(joint.from());
      Coordinate to = at(joint.to());
      double x = (from.x + 3 * to.x) / 4;
      double y = (from.y + 3 * to.y) / 4;
      String height = sheet.heights().bare(joint.height());
      sheet.labels().near(new Label(text + " " + height, x, y, Look.DAM), 8);
    }
    for (KeptOpen kept : sheet.plan().preparation().keepOpen()) {
      String text = kept.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
      if (kept.outline().isPresent()) {
        sheet.labels().near(sheet.label(text, kept.x(), kept.y(), Look.DAM), 10);
      }
    }
  }

  private Coordinate at(Position position) {
    return sheet.view().at(position.x(), position.y());
  }
}
