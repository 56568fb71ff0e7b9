package dev.fillplane.client.host;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One line of an estimate.
 *
 * @param code stable code of the item, such as {@code underlayment}
 * @param ownCode the host's code of it, where the price list has one
 * @param reference MasterFormat number under which it is usually written, such as {@code 03 54 16}
 * @param kind material, consumable, labour, equipment or disposal; more words may come
 * @param description what it is, for people
 * @param quantity what the plan takes
 * @param order what is bought: with waste and reserve, in whole packs
 * @param unitPrice price of one unit at this order, where the price list has one
 * @param amount the order at this price, rounded to the currency
 * @param basis where in the plan the quantity comes from, such as {@code #/quantities/bags/order}
 */
public record LineItem(
    String code,
    Optional<String> ownCode,
    String reference,
    String kind,
    String description,
    Quantity quantity,
    Quantity order,
    Optional<BigDecimal> unitPrice,
    Optional<BigDecimal> amount,
    String basis) {}
