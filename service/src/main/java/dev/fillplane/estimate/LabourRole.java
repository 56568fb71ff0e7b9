package dev.fillplane.estimate;

import dev.fillplane.pour.Role;
import java.util.Arrays;
import java.util.Optional;

/** For what an hour is paid; {@link Role} at the pour, and what comes before and after. */
public enum LabourRole {
  /** Setting up, cleaning, grinding, masking, sealing, priming, and coming back. */
  PREPARE("prepare"),
  MIX("mix"),
  CARRY_AND_POUR("carry-and-pour"),
  RAKE("rake"),
  SPIKE_ROLL("spike-roll"),
  MEASURE_WATER("measure-water"),
  CLEAN("clean"),
  /** Waiting, and what is paid up to half a day. */
  STAND_BY("stand-by");

  /** Stands for every role whose own rate is not told. */
  public static final String USUAL = "usual";

  private final String code;

  LabourRole(String code) {
    this.code = code;
  }

  /** Its word in a request. */
  public String code() {
    return code;
  }

  static Optional<LabourRole> find(String code) {
    return Arrays.stream(values()).filter(role -> role.code.equals(code)).findFirst();
  }

  static LabourRole of(Role role) {
    return valueOf(role.name());
  }
}
