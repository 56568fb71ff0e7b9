package dev.fillplane.client.host;

/** The units of what a host tells and gets. */
public enum Measures {
  /** Metres on plan, millimetres of height, litres, kilograms. */
  METRIC,
  /** Feet on plan, inches of height, US quarts, pounds. */
  US
}
