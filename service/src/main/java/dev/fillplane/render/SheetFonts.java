package dev.fillplane.render;

import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
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
 * The fonts of a sheet, read at its first use. PDFBox would read every font of the machine for
 * those of a form, which a sheet has not; it is given ours in their place, once for the whole
 * process, and what the layout says to itself is not logged.
 */
final class SheetFonts {

  private static final byte[] REGULAR = read("fonts/DejaVuSans.ttf");
  private static final byte[] BOLD = read("fonts/DejaVuSans-Bold.ttf");

  static {
    XRLog.setLoggingEnabled(false);
    FontMappers.set(new Ours(parse(REGULAR)));
  }

  private SheetFonts() {}

  static byte[] regular() {
    return REGULAR;
  }

  static byte[] bold() {
    return BOLD;
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
