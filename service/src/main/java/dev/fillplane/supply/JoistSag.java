package dev.fillplane.supply;

import dev.fillplane.depth.Fill;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Load;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.List;

/**
 * How far a load bends joists that just meet L/360 under 40 psf, and how much of a pour goes into
 * the bow that its own weight makes. Of a beam under an even load the mean of the bow is 16/25 of
 * its middle; what the fill of the bow weighs itself is left out.
 *
 * <p>IRC tables R301.5 (40 psf of live load) and R301.7 (floors L/360); joists that just meet them
 * are an assumption.
 */
public final class JoistSag {

  /** Live load that the joists are taken to be made for, Pa. */
  public static final double LIVE_LOAD = Load.ofPoundsPerSquareFoot(40).si();

  private static final double SPANS = 360;
  private static final double MEAN_SHARE = 16.0 / 25;

  private JoistSag() {}

  /** Sag in the middle under the whole live load. */
  public static double allowed(double span) {
    return span / SPANS;
  }

  /** Sag in the middle under an even {@code load}, Pa. */
  public static double middle(double span, double load) {
    return allowed(span) * load / LIVE_LOAD;
  }

  /**
   * What the bow takes, as a share of all that is poured: since the bow grows with the depth, it is
   * a fixed part of the volume over wood.
   *
   * @param fills what is poured in each room, in the order of {@code rooms}
   */
  public static double share(double span, List<Room> rooms, List<Fill> fills, DataSheet sheet) {
    double all = 0;
    double wood = 0;
    for (int i = 0; i < rooms.size(); i++) {
      all += fills.get(i).volume();
      wood += rooms.get(i).isOf(Substrate.WOOD) ? fills.get(i).volume() : 0;
    }
    double perMetre = Load.ofMassPerArea(sheet.wetDensity()).si();
    return all > 0 ? MEAN_SHARE * middle(span, perMetre) * wood / all : 0;
  }
}
