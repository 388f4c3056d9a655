package wallbook.bench;

/**
 * One place of the invented building.
 *
 * @param id name for references
 * @param room room it is in; of a stub-out, the closet it is wired from
 * @param plan how it is made
 * @param letter letter of its plate in the room
 */
record WiredPlace(String id, Room room, PlacePlan plan, char letter) {}
