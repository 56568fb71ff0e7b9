package dev.fillplane.flatness;

/** The floor under a straightedge: as it is, the limit of the covering, as it will probably be. */
public record FlatnessSummary(FloorGap before, FlatnessLimit limit, FloorGap after) {}
