package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wallbook.compose.drawing.OneLine;

/**
 * Gives the lines that pass from row to row a track each, so that lines on one track have no row in
 * common; the first track that is free is taken. A line within a row needs none.
 *
 * @param tracks track of each line, from 0; 0 also for those within a row
 * @param count tracks in all
 */
record OneLineTracks(List<Integer> tracks, int count) {

  /** Rows that a line passes, both included. */
  private record Span(int from, int to) {
    boolean meets(Span other) {
      return from <= other.to && other.from <= to;
    }
  }

  static OneLineTracks of(OneLine house, int nodesInRow) {
    Map<String, Integer> rows = rows(house, nodesInRow);
    List<List<Span>> taken = new ArrayList<>();
    List<Integer> tracks = new ArrayList<>();
    for (OneLine.Link link : house.links()) {
      int from = rows.get(link.from());
      int to = rows.get(link.to());
      tracks.add(from == to ? 0 : track(taken, new Span(Math.min(from, to), Math.max(from, to))));
    }
    return new OneLineTracks(List.copyOf(tracks), taken.size());
  }

  int of(int link) {
    return tracks.get(link);
  }

  private static int track(List<List<Span>> taken, Span span) {
    int track = 0;
    while (track < taken.size() && taken.get(track).stream().anyMatch(span::meets)) {
      track++;
    }
    if (track == taken.size()) {
      taken.add(new ArrayList<>());
    }
    taken.get(track).add(span);
    return track;
  }

  /** The row that each node stands in, counted over all bands. */
  private static Map<String, Integer> rows(OneLine house, int nodesInRow) {
    Map<String, Integer> rows = new HashMap<>();
    int row = 0;
    for (OneLine.Band band : house.bands()) {
      for (int i = 0; i < band.nodes().size(); i++) {
        if (i > 0 && i % nodesInRow == 0) {
          row++;
        }
        rows.put(band.nodes().get(i).id(), row);
      }
      row++;
    }
    return rows;
  }
}
