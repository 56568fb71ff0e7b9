package dev.fillplane.estimate;

import dev.fillplane.quantity.Money;

/** What all lines of one kind cost. */
public record KindTotal(ItemKind kind, Money amount) {}
