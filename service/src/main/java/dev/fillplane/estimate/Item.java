package dev.fillplane.estimate;

import static dev.fillplane.estimate.ItemKind.CONSUMABLE;
import static dev.fillplane.estimate.ItemKind.DISPOSAL;
import static dev.fillplane.estimate.ItemKind.EQUIPMENT;
import static dev.fillplane.estimate.ItemKind.LABOUR;
import static dev.fillplane.estimate.ItemKind.MATERIAL;

import dev.fillplane.material.Binder;
import dev.fillplane.quantity.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Everything that may stand in a line. Codes are stable; items may grow in number. */
public enum Item {
  UNDERLAYMENT("underlayment", MATERIAL, Sold.BAGS, Section.UNDERLAYMENT),
  PRIMER("primer", MATERIAL, Sold.VOLUME, Section.UNDERLAYMENT),
  MIX_WATER("mix-water", MATERIAL, Sold.VOLUME, Section.UNDERLAYMENT),
  MOISTURE_BARRIER("moisture-barrier", MATERIAL, Sold.AREA, Section.PREPARATION),
  CRACK_FILLER("crack-filler", MATERIAL, Sold.LENGTH, Section.CONCRETE),
  JOINT_PROFILE("joint-profile", MATERIAL, Sold.LENGTH, Section.PREPARATION),
  PERIMETER_STRIP("perimeter-strip", CONSUMABLE, Sold.LENGTH, Section.PREPARATION),
  SEALANT("sealant", CONSUMABLE, Sold.VOLUME, Section.PREPARATION),
  MASKING_TAPE("masking-tape", CONSUMABLE, Sold.LENGTH, Section.PREPARATION),
  FOAM("foam", CONSUMABLE, Sold.VOLUME, Section.PREPARATION),
  DAM_BOARD("dam-board", CONSUMABLE, Sold.LENGTH, Section.PREPARATION),
  BAY_STOP("bay-stop", CONSUMABLE, Sold.LENGTH, Section.PREPARATION),
  BOX_OUT("box-out", CONSUMABLE, Sold.PIECES, Section.PREPARATION),
  DEPTH_PIN("depth-pin", CONSUMABLE, Sold.PIECES, Section.UNDERLAYMENT),
  SCREED_RAIL("screed-rail", CONSUMABLE, Sold.LENGTH, Section.UNDERLAYMENT),
  GRINDING_BLADE("grinding-blade", CONSUMABLE, Sold.PIECES, Section.CONCRETE),
  PRIMER_ROLLER("primer-roller", CONSUMABLE, Sold.PIECES, Section.UNDERLAYMENT),
  DUST_BAG("dust-bag", CONSUMABLE, Sold.PIECES, Section.PREPARATION),
  LABOUR_SET_UP("labour-set-up", LABOUR, Sold.WORK, Section.PREPARATION),
  LABOUR_BLASTING("labour-blasting", LABOUR, Sold.WORK, Section.PREPARATION),
  LABOUR_GRINDING("labour-grinding", LABOUR, Sold.WORK, Section.CONCRETE),
  LABOUR_CRACKS("labour-cracks", LABOUR, Sold.WORK, Section.CONCRETE),
  LABOUR_BARRIER("labour-barrier", LABOUR, Sold.WORK, Section.PREPARATION),
  LABOUR_MASKING("labour-masking", LABOUR, Sold.WORK, Section.PREPARATION),
  LABOUR_SEALING("labour-sealing", LABOUR, Sold.WORK, Section.PREPARATION),
  LABOUR_PRIMING("labour-priming", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  LABOUR_MIXING("labour-mixing", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  LABOUR_POURING("labour-pouring", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  LABOUR_RAKING("labour-raking", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  LABOUR_ROLLING("labour-rolling", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  LABOUR_MEASURING("labour-measuring", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  LABOUR_CLEANING("labour-cleaning", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  LABOUR_WAITING("labour-waiting", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  LABOUR_WASHING("labour-washing", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  LABOUR_RETURN("labour-return", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  LABOUR_HALF_DAYS("labour-half-days", LABOUR, Sold.WORK, Section.UNDERLAYMENT),
  BLASTER("blaster", EQUIPMENT, Sold.HIRE, Section.PREPARATION),
  GRINDER("grinder", EQUIPMENT, Sold.HIRE, Section.CONCRETE),
  DUST_EXTRACTOR("dust-extractor", EQUIPMENT, Sold.HIRE, Section.PREPARATION),
  MIXER("mixer", EQUIPMENT, Sold.HIRE, Section.UNDERLAYMENT),
  BARREL("barrel", EQUIPMENT, Sold.HIRE, Section.UNDERLAYMENT),
  PUMP("pump", EQUIPMENT, Sold.HIRE, Section.UNDERLAYMENT),
  PLACING_TOOLS("placing-tools", EQUIPMENT, Sold.HIRE, Section.UNDERLAYMENT),
  EMPTY_BAGS("empty-bags", DISPOSAL, Sold.BAGS, Section.UNDERLAYMENT),
  WASTE_MIX("waste-mix", DISPOSAL, Sold.MASS, Section.UNDERLAYMENT),
  WASH_WATER("wash-water", DISPOSAL, Sold.VOLUME, Section.UNDERLAYMENT);

  private final String code;
  private final ItemKind kind;
  private final Sold sold;
  private final Section section;

  Item(String code, ItemKind kind, Sold sold, Section section) {
    this.code = code;
    this.kind = kind;
    this.sold = sold;
    this.section = section;
  }

  /** Its stable code. */
  public String code() {
    return code;
  }

  /** What a line of it is for. */
  public ItemKind kind() {
    return kind;
  }

  /** Its MasterFormat number where the pour has this binder. */
  public String reference(Binder binder) {
    return switch (section) {
      case CONCRETE -> MasterFormat.CONCRETE_MAINTENANCE;
      case PREPARATION -> MasterFormat.FLOORING_PREPARATION;
      case UNDERLAYMENT ->
          binder == Binder.GYPSUM
              ? MasterFormat.GYPSUM_UNDERLAYMENT
              : MasterFormat.CEMENT_UNDERLAYMENT;
    };
  }

  /** The units in which callers of {@code units} may price it, the usual one first. */
  public List<SaleUnit> saleUnits(UnitSystem units) {
    return SaleUnit.of(sold, units);
  }

  /** A unit by its code, of whatever system, if the item is sold in it. */
  Optional<SaleUnit> saleUnit(String told) {
    return SaleUnit.of(sold).stream().filter(unit -> unit.code().equals(told)).findFirst();
  }

  static Optional<Item> find(String code) {
    return Arrays.stream(values()).filter(item -> item.code.equals(code)).findFirst();
  }

  private enum Section {
    CONCRETE,
    PREPARATION,
    UNDERLAYMENT
  }
}
