package dev.fillplane.client;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;

/** All items of a list that comes page by page, the next page asked for when it is needed. */
final class Pages<T> implements Iterator<T> {

  /** Some items, and where there are more the cursor of those. */
  record Page<T>(List<T> items, Optional<String> next) {}

  private final Function<Optional<String>, Page<T>> read;
  private Iterator<T> items = List.<T>of().iterator();
  private Optional<String> cursor = Optional.empty();
  private boolean last;

  /** Reads a page by its cursor, the first by none. */
  Pages(Function<Optional<String>, Page<T>> read) {
    this.read = read;
  }

  @Override
  public boolean hasNext() {
    while (!items.hasNext() && !last) {
      Page<T> page = read.apply(cursor);
      items = page.items().iterator();
      cursor = page.next();
      last = cursor.isEmpty();
    }
    return items.hasNext();
  }

  @Override
  public T next() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    return items.next();
  }
}
