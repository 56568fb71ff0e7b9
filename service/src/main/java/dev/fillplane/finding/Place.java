package dev.fillplane.finding;

/**
 * A place in a request: a JSON Pointer (RFC 6901) that grows step by step and is written as a URI
 * fragment, {@code #/survey/setups/0}.
 */
public final class Place {

  private static final Place ROOT = new Place("#");

  private final String pointer;

  private Place(String pointer) {
    this.pointer = pointer;
  }

  /** The request as a whole. */
  public static Place root() {
    return ROOT;
  }

  /** The property {@code name} of this place. */
  public Place at(String name) {
    return new Place(pointer + "/" + name.replace("~", "~0").replace("/", "~1"));
  }

  /** The element {@code index} of the list at this place. */
  public Place at(int index) {
    return new Place(pointer + "/" + index);
  }

  /** The same place where its request is the property {@code name} of another. */
  public Place under(String name) {
    return new Place(ROOT.at(name).pointer + pointer.substring(1));
  }

  /** The pointer in its fragment form. */
  @Override
  public String toString() {
    return pointer;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Place place && place.pointer.equals(pointer);
  }

  @Override
  public int hashCode() {
    return pointer.hashCode();
  }
}
