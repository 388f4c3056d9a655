package wallbook.assess.fibre;

import wallbook.quantity.Decibels;

/**
 * What joins a fibre between the ends that are measured or plugged in.
 *
 * @param connectors mated connector pairs; the adapter of a panel or jack at an end is one
 * @param splices fusion or mechanical splices
 */
public record Joints(int connectors, int splices) {
  public Joints {
    if (connectors < 0 || splices < 0) {
      throw new IllegalArgumentException("fewer than no joints");
    }
  }

  /** Loss of all joints together, in the loss of one connector pair and one splice. */
  public Decibels loss(Decibels connector, Decibels splice) {
    return connector.times(connectors).plus(splice.times(splices));
  }
}
