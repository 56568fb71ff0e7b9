package dev.fillplane.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.fillplane.material.Binder;
import dev.fillplane.pour.Role;
import dev.fillplane.quantity.UnitSystem;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ItemsTest {

  @Test
  void noCodeComesTwice() {
    List<String> codes = Arrays.stream(Item.values()).map(Item::code).toList();
    assertEquals(codes.stream().distinct().toList(), codes);
  }

  @Test
  void eachIsSoldInBothSystems() {
    for (Item item : Item.values()) {
      for (UnitSystem units : UnitSystem.values()) {
        assertFalse(item.saleUnits(units).isEmpty(), item + " " + units);
      }
    }
    assertEquals(
        List.of(SaleUnit.QUART, SaleUnit.GALLON, SaleUnit.CUBIC_FOOT),
        Item.PRIMER.saleUnits(UnitSystem.US));
  }

  /** MasterFormat numbers, from memory. */
  @Test
  void referencesFollowTheBinder() {
    assertEquals("03 54 16", Item.UNDERLAYMENT.reference(Binder.CEMENT));
    assertEquals("03 54 13", Item.UNDERLAYMENT.reference(Binder.GYPSUM));
    assertEquals("09 05 61", Item.MOISTURE_BARRIER.reference(Binder.GYPSUM));
    assertEquals("03 01 30", Item.LABOUR_GRINDING.reference(Binder.CEMENT));
  }

  @Test
  void everyRoleAtThePourIsPaid() {
    for (Role role : Role.values()) {
      assertEquals(role.name(), LabourRole.of(role).name());
    }
  }
}
