package org.jointwright.app;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.jointwright.proof.Proof;
import org.jointwright.proof.ProofWords;
import org.jointwright.proof.paper.PdfWords;
import org.jointwright.proof.read.SheetReader;

/** A printed cut sheet, rebuilt from its words and figures alone. */
public final class SheetProof {
  private final Proof proof;

  private SheetProof(Proof proof) {
    this.proof = proof;
  }

  /**
   * Rebuilds the cut sheet in a PDF.
   *
   * @return empty where no page of it is a cut sheet
   * @throws IOException when it is no PDF that can be read
   */
  public static Optional<SheetProof> of(byte[] pdf) throws IOException {
    return Proof.of(pdf).map(SheetProof::new);
  }

  /**
   * What other sheets of this program are in a PDF, by their titles.
   *
   * @throws IOException when it is no PDF that can be read
   */
  public static List<String> others(byte[] pdf) throws IOException {
    return SheetReader.others(PdfWords.of(pdf));
  }

  /** Whether every figure can be right. */
  public boolean isProven() {
    return proof.isProven();
  }

  /** What was found, line by line, in the sheet's own language and measures. */
  public List<String> lines() {
    return new ProofWords(proof).lines();
  }

  /** The same for other programs. */
  public String json() {
    return ProofFile.write(proof);
  }

  /**
   * A picture of what was rebuilt.
   *
   * @param svg whether it is an SVG; else a PNG
   */
  public byte[] picture(boolean svg) {
    return new ProofPicture(proof).bytes(svg);
  }
}
