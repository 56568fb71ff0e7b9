package dev.fillplane.render;

import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts of a text that are written in one direction (Unicode Standard Annex 9). A number among
 * words that are read from right to left stays in their part, since it stands between them.
 */
final class TextRuns implements BidiSplitter {

  private final List<BidiTextRun> runs = new ArrayList<>();

  @Override
  public void setParagraph(String text, byte direction) {
    int base = direction == RTL ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT;
    Bidi paragraph = new Bidi(text, base);
    runs.clear();
    int start = 0;
    for (int i = 0; i < paragraph.getRunCount(); i++) {
      boolean leftwards = paragraph.getRunLevel(i) > 0;
      boolean last = i + 1 == paragraph.getRunCount();
      if (last || paragraph.getRunLevel(i + 1) > 0 != leftwards) {
        int limit = paragraph.getRunLimit(i);
        runs.add(new BidiTextRun(start, limit - start, leftwards ? RTL : LTR));
        start = limit;
      }
    }
  }

  @Override
  public int countTextRuns() {
    return runs.size();
  }

  @Override
  public BidiTextRun getVisualRun(int run) {
    return runs.get(run);
  }

  /** A sheet is English; what is written to the left stands in it. */
  @Override
  public byte getBaseDirection(String text) {
    return LTR;
  }
}
