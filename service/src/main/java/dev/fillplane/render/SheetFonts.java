package dev.fillplane.render;

import com.openhtmltopdf.util.XRLog;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * The fonts of a sheet, read at its first use and told to Java, which draws the texts of pictures.
 * PDFBox would read every font of the machine for those of a form, which a sheet has not; it is
 * given ours in their place, once for the whole process, and what the layout says to itself is not
 * logged.
 */
final class SheetFonts {

  private static final byte[] REGULAR = read("fonts/DejaVuSans.ttf");
  private static final byte[] BOLD = read("fonts/DejaVuSans-Bold.ttf");
  private static final CmapLookup LETTERS;
  private static final CmapLookup BOLD_LETTERS;

  static {
    XRLog.setLoggingEnabled(false);
    TrueTypeFont regular = parse(REGULAR);
    FontMappers.set(new Ours(regular));
    register(REGULAR);
    register(BOLD);
    LETTERS = letters(regular);
    BOLD_LETTERS = letters(parse(BOLD));
  }

  /** Chinese, Japanese and Korean, read when a sheet first needs it. */
  private static final class EastAsian {
    static final byte[] FONT = read("fonts/WenQuanYiMicroHei.ttf");
    static final CmapLookup LETTERS = letters(parse(FONT));

    static {
      register(FONT);
    }
  }

  private SheetFonts() {}

  static byte[] regular() {
    return REGULAR;
  }

  static byte[] bold() {
    return BOLD;
  }

  static byte[] eastAsian() {
    return EastAsian.FONT;
  }

  /** Whether regular and bold letters are there. */
  static boolean holds(int letter) {
    return LETTERS.getGlyphId(letter) > 0 && BOLD_LETTERS.getGlyphId(letter) > 0;
  }

  static boolean holdsEastAsian(int letter) {
    return EastAsian.LETTERS.getGlyphId(letter) > 0;
  }

  /** For the texts of pictures, which Java draws. */
  private static void register(byte[] font) {
    try {
      GraphicsEnvironment.getLocalGraphicsEnvironment()
          .registerFont(Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(font)));
    } catch (FontFormatException e) {
      throw new IllegalStateException("a font of ours cannot be read", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CmapLookup letters(TrueTypeFont font) {
    try {
      return font.getUnicodeCmapLookup();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] read(String name) {
    try (InputStream in = SheetFonts.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TrueTypeFont parse(byte[] font) {
    try {
      return new TTFParser().parse(new RandomAccessReadBuffer(new ByteArrayInputStream(font)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private record Ours(TrueTypeFont font) implements FontMapper {

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
      return new FontMapping<>(font, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
      return new FontMapping<>(font, false);
    }

    @Override
    public CIDFontMapping getCIDFont(
        String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
      return new CIDFontMapping(null, font, false);
    }
  }
}
