package wallbook.assess.fibre;

import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.LinearAttenuation;

/** Insertion loss of an optical link from its parts. */
public final class LinkLoss {
  private LinkLoss() {}

  /**
   * {@code IL = L · α + n_conn · a_conn + n_splice · a_splice}.
   *
   * <p>Source: loss budget of ANSI/TIA-568.3-D and of The Fiber Optic Association. L is the length,
   * α the attenuation of the cabled fibre at the wavelength, n_conn the mated connector pairs in
   * the link, both ends included (one-cord reference of TIA-526-14 and IEC 61280-4-1), n_splice the
   * splices. Valid for any length of one class of fibre at one wavelength.
   *
   * @throws IllegalArgumentException if the length or the attenuation is negative
   */
  public static Decibels of(
      Length length,
      LinearAttenuation attenuation,
      Joints joints,
      Decibels connector,
      Decibels splice) {
    if (length.inMetres() < 0 || attenuation.inDecibelsPerMetre() < 0) {
      throw new IllegalArgumentException("a negative length or attenuation");
    }
    return attenuation.over(length).plus(joints.loss(connector, splice));
  }
}
