package dev.fillplane.survey;

import java.io.IOException;
import java.io.StringReader;

/** Reads a text for somebody who takes it row by row; fails in a row that is too long. */
final class RowReader extends StringReader {

  private final int longest;
  private long signs;

  RowReader(String text, int longest) {
    super(text);
    this.longest = longest;
  }

  /** Counts anew: what is read from here on is of the next row. */
  void startRow() {
    signs = 0;
  }

  /** Whether the reading failed. */
  boolean isRowTooLong() {
    return signs > longest;
  }

  @Override
  public int read(char[] block, int from, int length) throws IOException {
    if (isRowTooLong()) {
      throw new IOException("a row of more than " + longest + " signs");
    }
    int count = super.read(block, from, length);
    signs += Math.max(0, count);
    return count;
  }
}
