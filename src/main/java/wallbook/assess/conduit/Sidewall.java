package wallbook.assess.conduit;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Diameter;
import wallbook.quantity.Force;
import wallbook.quantity.Length;
import wallbook.quantity.LinearForce;

/** Greatest sidewall pressure anywhere along a pull. */
final class Sidewall {
  private Sidewall() {}

  /** Whether the bore and the radius of every bend are known. */
  static boolean isKnown(ConduitCase conduit) {
    Optional<Diameter> bore = conduit.bore().map(Bore::diameter);
    return conduit.sections().stream()
        .flatMap(section -> section.pullPieces(bore).stream())
        .allMatch(
            piece -> !(piece instanceof PullPiece.Bend bend) || bend.insideRadius().isPresent());
  }

  /**
   * Greatest pressure in any bend, on the most pressed cable.
   *
   * @param conduit one of which {@link #isKnown} holds
   * @param cables how many are pulled together
   * @param back whether the pull is fed at the to-end
   */
  static LinearForce greatest(ConduitCase conduit, int cables, PullingTension pull, boolean back) {
    Optional<Diameter> bore = conduit.bore().map(Bore::diameter);
    LinearForce greatest = LinearForce.newtonsPerMetre(0);
    for (PullSection section : conduit.sections()) {
      List<PullPiece> there = section.pullPieces(bore);
      List<PullPiece> pieces = back ? PullingTension.reversed(there) : there;
      List<Force> tensions = pull.along(pieces);
      for (int i = 0; i < pieces.size(); i++) {
        if (pieces.get(i) instanceof PullPiece.Bend bend) {
          LinearForce here =
              pressure(tensions.get(i), bend.insideRadius().orElseThrow(), cables, pull);
          greatest = here.compareTo(greatest) > 0 ? here : greatest;
        }
      }
    }
    return greatest;
  }

  private static LinearForce pressure(
      Force tension, Length insideRadius, int cables, PullingTension pull) {
    return switch (cables) {
      case 2 -> SidewallPressure.triangular(tension, insideRadius, pull.correction());
      case 3 -> SidewallPressure.cradled(tension, insideRadius, pull.correction());
      default -> SidewallPressure.single(tension, insideRadius);
    };
  }
}
