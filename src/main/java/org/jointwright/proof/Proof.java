package org.jointwright.proof;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.jointwright.proof.build.Closing;
import org.jointwright.proof.build.Fault;
import org.jointwright.proof.build.Faults;
import org.jointwright.proof.paper.PdfWords;
import org.jointwright.proof.paper.Printed;
import org.jointwright.proof.read.Reading;
import org.jointwright.proof.read.SheetReader;

/**
 * A printed cut sheet rebuilt from its words and figures alone, and what cannot be right about it.
 *
 * @param reading what it says
 * @param closing what was rebuilt from that, and how near it closes
 * @param faults what cannot be right; none where it is proven
 */
public record Proof(Reading reading, Closing closing, List<Fault> faults) {
  /** Copies the list. */
  public Proof {
    faults = List.copyOf(faults);
  }

  /**
   * The proof of the cut sheet in a PDF.
   *
   * @return empty where no page of it is a cut sheet of ours
   * @throws IOException when it is no PDF that can be read
   */
  public static Optional<Proof> of(byte[] pdf) throws IOException {
    return of(PdfWords.of(pdf));
  }

  /** The proof of the cut sheet whose words these are. */
  public static Optional<Proof> of(List<Printed> words) {
    return SheetReader.read(words).map(Proof::of);
  }

  private static Proof of(Reading reading) {
    Closing closing = Closing.of(reading);
    return new Proof(reading, closing, Faults.of(reading, closing));
  }

  /** Whether everything on it can be right. */
  public boolean isProven() {
    return faults.isEmpty();
  }
}
