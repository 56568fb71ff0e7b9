package dev.fillplane.render;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgExternalResourceMode;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgScriptMode;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The sheet of a pour as PDF, tagged, with its fonts in it: the {@link PourPage} laid out on paper.
 *
 * <p>Nothing is loaded while it is laid out: no address is resolved, no script of a picture runs,
 * no font of the machine is looked for. It tells no date, and the same plan gives the same bytes.
 * The fonts have Latin, Greek, Cyrillic, Hebrew, Arabic, Chinese, Japanese and Korean letters, not
 * those of scripts that must be shaped by more than joining; what they lack is a box, and the foot
 * says so.
 */
public final class PourSheet {

  private static final String FAMILY = "DejaVu Sans";
  private static final String EAST_ASIAN = "WenQuanYi Micro Hei";

  /** Stands for the moment at which other documents are made. */
  private static final long NO_MOMENT = 0;

  private PourSheet() {}

  /**
   * Lays out a sheet.
   *
   * @param request as it was planned
   * @param plan its answer
   * @param paper to print on
   * @param wording makes the sentences of notes, remarks and warnings
   * @return a PDF document
   */
  public static byte[] write(PlanRequest request, Plan plan, Paper paper, Wording wording) {
    Written page = PourPage.paged(PageInput.of(request, plan, paper, wording));
    try (PdfBoxRenderer renderer = renderer(page);
        PDDocument document = renderer.createPDFKeepOpen()) {
      return bytes(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PdfBoxRenderer renderer(Written page) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFastMode();
    builder.usePdfUaAccessibility(true);
    builder.withProducer("Fillplane");
    builder.useFont(font(SheetFonts.regular()), FAMILY, 400, FontStyle.NORMAL, true);
    builder.useFont(font(SheetFonts.bold()), FAMILY, 700, FontStyle.NORMAL, true);
    if (page.isEastAsian()) {
      builder.useFont(font(SheetFonts.eastAsian()), EAST_ASIAN, 400, FontStyle.NORMAL, true);
    }
    builder.useUnicodeBidiSplitter(TextRuns::new);
    builder.useUnicodeBidiReorderer(new Leftwards());
    builder.useSVGDrawer(new BatikSVGDrawer(SvgScriptMode.SECURE, SvgExternalResourceMode.SECURE));
    refuseAddresses(builder);
    builder.withW3cDocument(SheetDocument.parse(page.text()), null);
    return builder.buildPdfRenderer();
  }

  private static void refuseAddresses(PdfRendererBuilder builder) {
    builder.useUriResolver((base, address) -> null);
    for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl((address, type) -> false, when);
    }
  }

  private static FSSupplier<InputStream> font(byte[] font) {
    return () -> new ByteArrayInputStream(font);
  }

  private static byte[] bytes(PDDocument document) throws IOException {
    document.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
    document.setDocumentId(NO_MOMENT);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }
}
