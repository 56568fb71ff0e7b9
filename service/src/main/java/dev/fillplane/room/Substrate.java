package dev.fillplane.room;

/** What is poured on, with what to look at before it is primed (common practice, no source). */
public enum Substrate {
  CONCRETE("concrete", "Sound, dry, free of curing compound and sealer; a drop of water goes in."),
  SCREED("cement screed", "Never weaker than the pour; hollow or dusting parts come out first."),
  TILE("ceramic or stone tile", "Firmly bonded and clean; a primer for dense bases."),
  WOOD(
      "wood panels or boards",
      "Stiff, screwed, joints taped, moisture at most 14 %; the joists must carry the pour."),
  GYPSUM(
      "gypsum",
      "A cement pour debonds from gypsum without a primer that isolates it; the base must be dry.");

  private final String title;
  private final String note;

  Substrate(String title, String note) {
    this.title = title;
    this.note = note;
  }

  /** What people call it. */
  public String title() {
    return title;
  }

  /** What to look at before it is primed. */
  public String note() {
    return note;
  }
}
