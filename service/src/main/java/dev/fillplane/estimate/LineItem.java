package dev.fillplane.estimate;

import dev.fillplane.finding.Wording;
import dev.fillplane.quantity.Money;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * One line. Quantity, waste, reserve and order are in the unit of the price, or in the usual one of
 * the item.
 *
 * @param code of the item
 * @param ownCode the caller's, if told
 * @param reference its MasterFormat number
 * @param kind what it is for
 * @param description what it is
 * @param role who works, where it is labour
 * @param quantity what the plan takes, without waste
 * @param waste on top of it, where there is any
 * @param reserve on top of both, for the confidence that was asked; of underlayment only
 * @param order what is bought: the sum, in whole packs
 * @param unitPrice of one unit at this order, if it has a price
 * @param amount of the order
 * @param basis where in the plan the quantity comes from, as a JSON Pointer in fragment form
 */
public record LineItem(
    String code,
    Optional<String> ownCode,
    String reference,
    ItemKind kind,
    Wording description,
    Optional<LabourRole> role,
    Measure quantity,
    Optional<Measure> waste,
    Optional<Measure> reserve,
    Measure order,
    Optional<BigDecimal> unitPrice,
    Optional<Money> amount,
    String basis) {}
