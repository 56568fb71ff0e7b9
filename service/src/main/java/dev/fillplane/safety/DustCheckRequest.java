package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.UnitSystem;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Work that raises dust.
 *
 * @param units the caller's units
 * @param task what is done
 * @param wheelDiameter of a grinder held in the hands; wanted for that
 * @param hours of a day that it is done; taken as over 4, with a warning
 * @param indoors whether it is done indoors; taken as indoors, with a warning
 * @param jurisdiction whose limits hold; those of all are answered unless told
 */
public record DustCheckRequest(
    UnitSystem units,
    DustTask task,
    @Measured(Dimension.HEIGHT) OptionalDouble wheelDiameter,
    OptionalDouble hours,
    Optional<Boolean> indoors,
    Optional<Jurisdiction> jurisdiction) {}
