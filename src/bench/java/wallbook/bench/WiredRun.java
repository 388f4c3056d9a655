package wallbook.bench;

/**
 * One cable of the invented building.
 *
 * @param id name for references
 * @param label what is printed on it
 * @param sort what cable it is
 * @param storey storey whose rack it comes from
 * @param panel panel there
 * @param port port of the panel
 * @param place id of the place it goes to
 * @param jack jack of the place
 * @param lengthMetres length with slack
 * @param conduit conduit that it lies in, or nothing
 * @param serves what it serves
 */
record WiredRun(
    String id,
    String label,
    RunSort sort,
    int storey,
    String panel,
    int port,
    String place,
    int jack,
    double lengthMetres,
    String conduit,
    String serves) {

  /** Length without the slack. */
  double linkMetres() {
    return lengthMetres - 0.5;
  }
}
