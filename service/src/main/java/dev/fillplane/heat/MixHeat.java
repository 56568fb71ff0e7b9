package dev.fillplane.heat;

/**
 * Heat balance of a fresh mix: powder, aggregate, water and ice come to one temperature and no heat
 * is lost or made.
 *
 * <p>Method: {@code T = [0.22 (Ta Wa + Tc Wc) + Tw Ww - 79.6 Wi] / [0.22 (Wa + Wc) + Ww + Wi]} (US
 * Army TM 5-852-4 Eq. 16; the ice term after ACI 305R, from memory), exact for constant specific
 * heats. A form that puts 0.22 on the water too is in circulation; it is wrong. The ice term is
 * good to about 20 % ice. Masses in kg, temperatures in C; powder and water positive.
 *
 * @param powder cement or leveller
 * @param aggregate sand or stone; {@link Portion#none()} in a neat leveller
 * @param water mix water, without the ice
 * @param iceMass ice that melts in the mix; 0 in a leveller
 */
public record MixHeat(Portion powder, Portion aggregate, Portion water, double iceMass) {

  /** Specific heat of powder and aggregate as a share of that of water. */
  public static final double SOLID_HEAT = 0.22;

  /** Heat that melting ice takes, in K of an equal mass of water. */
  public static final double ICE_HEAT = 79.6;

  /** Powder and water only. */
  public static MixHeat of(Portion powder, Portion water) {
    return new MixHeat(powder, Portion.none(), water, 0);
  }

  /** Temperature of the mix as its parts meet, before the mixer warms it. */
  public double mixTemperature() {
    double heat = solidHeat() + water.mass() * water.temperature() - ICE_HEAT * iceMass;
    return heat / (capacity() + water.mass() + iceMass);
  }

  /** Temperature of the water that brings the mix to {@code wanted}; may be one no water has. */
  public double neededWater(double wanted) {
    double heat = wanted * (capacity() + water.mass() + iceMass) + ICE_HEAT * iceMass;
    return (heat - solidHeat()) / water.mass();
  }

  /**
   * Ice in place of an equal mass of water (of all the water, ice told included) that brings the
   * mix to {@code wanted}; for concrete-like mixes only. Negative where the mix is colder already,
   * more than the water where ice cannot do it.
   */
  public double neededIce(double wanted) {
    double all = water.mass() + iceMass;
    double heat = solidHeat() + all * water.temperature() - wanted * (capacity() + all);
    return heat / (water.temperature() + ICE_HEAT);
  }

  private double solidHeat() {
    return SOLID_HEAT
        * (powder.mass() * powder.temperature() + aggregate.mass() * aggregate.temperature());
  }

  private double capacity() {
    return SOLID_HEAT * (powder.mass() + aggregate.mass());
  }
}
