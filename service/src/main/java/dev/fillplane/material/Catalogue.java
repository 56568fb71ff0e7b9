package dev.fillplane.material;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.List;
import java.util.Optional;

/**
 * Generic data sheets. Every one is invented: no product is meant, the values are what is usual in
 * the trade (common practice, no source). Whoever pours works by the sheet of the bag on site.
 */
public final class Catalogue {

  private static final List<DataSheet> SHEETS = InventedSheets.all();

  private Catalogue() {}

  /** All sheets, the usual one first. */
  public static List<DataSheet> sheets() {
    return SHEETS;
  }

  /** The sheet that holds where nothing is told. */
  public static DataSheet usual() {
    return SHEETS.get(0);
  }

  /** The sheet with {@code id}. */
  public static Optional<DataSheet> find(String id) {
    return SHEETS.stream().filter(sheet -> sheet.id().equals(Optional.of(id))).findFirst();
  }

  /**
   * Makes a complete and consistent sheet of what was told.
   *
   * <p>With an id, values told take the place of those of the catalogue; a bag mass told scales the
   * bag. Without an id, the mass of the bag, its water and one of yield and wet density are needed;
   * the rest gets the defaults of {@link SheetDefaults}. Yield and wet density follow from one
   * another by mass balance. Nothing told at all: the usual sheet, with a warning.
   *
   * @param place of the material in the request
   * @param findings receives every contradiction as an error and every assumption as a warning
   * @return the sheet; after an error the usual one, so that the search for errors can go on
   */
  public static DataSheet resolve(MaterialWish wish, Place place, Findings findings) {
    if (wish.equals(MaterialWish.usual())) {
      findings.warning("material-assumed", place, "id", usual().id().orElseThrow());
      return usual();
    }
    int errors = findings.errors().size();
    DataSheet sheet = new SheetMaker(wish, place, findings).make();
    return findings.errors().size() == errors ? sheet : usual();
  }
}
