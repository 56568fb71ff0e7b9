package dev.fillplane.surface;

/**
 * What a plane cuts off a floor: the part of the floor that stands above it.
 *
 * @param area of the part on plan
 * @param momentX first moment of that area about the position counted from
 * @param momentY first moment of that area about the position counted from
 * @param volume of the part
 * @param edge by how much the area and its moments shrink as the plane rises and tilts: the
 *     integrals of 1, x, y, xx, xy and yy along the line in which plane and floor meet, over the
 *     steepness between them
 */
public record PlaneCut(double area, double momentX, double momentY, double volume, double[] edge) {}
