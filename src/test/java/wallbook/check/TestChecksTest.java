package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.finding.Severity;

class TestChecksTest {
  private static final String RUN =
      "- {id: r1, label: K-01, cable: cat6a, length: 100 ft, condition: in_service, from: {head: rack, panel: P1, port: 1, finish: terminated}, to: {place: d1, finish: terminated}}";
  private static final String FIBRE = RUN.replace("cat6a", "om3-2").replace("P1", "F1");

  private static SmallHouse test(String rest) {
    return on(RUN, rest);
  }

  private static SmallHouse on(String run, String rest) {
    return house()
        .with("runs", run)
        .with("tests", "- {id: t1, run: r1, date: 2026-04-20, " + rest + "}");
  }

  @Test
  void aWireMapNamesPinsOneToEightOrOpen() {
    String map = "kind: wire_map, result: fail, wire_map: [1, 2, open, 4, 5, 6, 7, ";
    test(map + "¶9]").finds("unknown-pin");
    test(map + "8]").findsNo("unknown-pin");
  }

  @Test
  void aWireMapHasEightEntries() {
    String map = "kind: wire_map, result: pass, wire_map: ";
    test(map + "¶[1, 2, 3, 4, 5, 6, 7]").finds("wire-map-of-other-length");
    test(map + "[1, 2, 3, 4, 5, 6, 7, 8]").findsNo("wire-map-of-other-length");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "wire_map: ¶[1, 2, 6, 4, 5, 3, 7, 8]",
        "shorts: ¶[3-6]",
        "split_pairs: ¶[36-45]",
        "worst: ¶[{parameter: next, margin: -0.1 dB}]"
      })
  void aPassRecordsNoFault(String fault) {
    var finding =
        test("kind: certification, result: pass, " + fault).finds("test-contradicts-itself");
    assertEquals(Severity.ERROR, finding.severity());

    test(("kind: certification, result: fail, " + fault).replace("¶", ""))
        .findsNo("test-contradicts-itself");
  }

  @Test
  void aMarginOfNothingIsAPass() {
    test("kind: certification, result: pass, worst: [{parameter: next, margin: 0 dB}]")
        .findsNo("test-contradicts-itself");
  }

  @Test
  void aFailureSaysWhatWasFound() {
    test("kind: verification, result: ¶fail").finds("failed-test-without-reason");
    test("kind: verification, result: fail, reason: pin 3 open")
        .findsNo("failed-test-without-reason");
  }

  @Test
  void bareFibreIsNotMeasured() {
    String loose = FIBRE.replace("d1, finish: terminated", "d1, finish: coiled");
    on(loose, "kind: ¶light_source, result: pass, losses: [{wavelength: 850 nm, loss: 1.1 dB}]")
        .finds("unterminated-fibre-called-tested");
    on(loose, "kind: continuity, result: pass").findsNo("unterminated-fibre-called-tested");
    on(FIBRE, "kind: light_source, result: pass, losses: [{wavelength: 850 nm, loss: 1.1 dB}]")
        .findsNo("unterminated-fibre-called-tested");
  }

  @Test
  void copperWithoutJacksIsNotCertified() {
    String loose = RUN.replace("d1, finish: terminated", "d1, finish: coiled");
    on(loose, "kind: ¶certification, result: pass").finds("unterminated-run-called-tested");
    on(loose, "kind: toning, result: pass").findsNo("unterminated-run-called-tested");
  }

  @Test
  void aMeasurementHasItsValues() {
    house()
        .with("runs", RUN)
        .with("tests", "- ¶{id: t1, run: r1, date: 2026-04-20, kind: length, result: pass}")
        .finds("test-without-values");
    test("kind: length, result: pass, length: 99 ft").findsNo("test-without-values");
    test("kind: wire_map, result: pass").findsNo("test-without-values");
  }

  @Test
  void aMeasuredLengthIsWithinATenthOfTheRecordedOne() {
    test("kind: length, result: pass, length: 110 ft").findsNo("measured-length-differs");
    test("kind: length, result: pass, length: ¶110.1 ft").finds("measured-length-differs");
    test("kind: length, result: pass, length: 90 ft").findsNo("measured-length-differs");
    test("kind: length, result: pass, length: ¶89.9 ft").finds("measured-length-differs");
  }

  @Test
  void aLimitBelowTheCableIsRemarkedOn() {
    String limit =
        "kind: certification, result: pass, limit: {standard: tia_568_2_d, configuration: permanent_link, category: ";
    var finding = test(limit + "¶cat6}").finds("limit-below-category");
    assertEquals(Optional.of("cat6a"), finding.nearest());

    test(limit + "cat6a}").findsNo("limit-below-category");
  }

  @Test
  void aReadingIsForAFibreOfTheCable() {
    String reading =
        "kind: light_source, result: pass, losses: [{wavelength: 850 nm, loss: 1.1 dB, fibre: ";
    on(FIBRE, reading + "2}]").findsNo("fibre-beyond-cable");
    on(FIBRE, reading + "¶3}]").finds("fibre-beyond-cable");
  }

  @Test
  void aDamagedRunDoesNotPassItsLastTest() {
    String damaged = RUN.replace("in_service", "damaged");
    on(damaged, "kind: verification, result: ¶pass").finds("damaged-run-passed-test");
    house()
        .with("runs", damaged)
        .with(
            "tests",
            "- {id: t1, run: r1, date: 2026-04-20, kind: verification, result: pass}",
            "- {id: t2, run: r1, date: 2026-04-21, kind: verification, result: fail, reason: cut}")
        .findsNo("damaged-run-passed-test");
  }

  @Test
  void aFailureStandsUntilALaterTestMakesItGood() {
    String failed =
        "- {id: t1, run: r1, date: 2026-04-20, kind: verification, reason: open, result: ";
    String later = "- {id: t2, run: r1, date: 2026-04-21, result: pass, kind: ";
    SmallHouse small = house().with("runs", RUN);

    small.with("tests", failed + "¶fail}").finds("failed-test-without-exception");
    small
        .with("tests", failed + "¶fail}", later + "toning}")
        .finds("failed-test-without-exception");
    small
        .with("tests", failed + "fail}", later + "certification, worst: [{parameter: next}]}")
        .findsNo("failed-test-without-exception");
  }

  @Test
  void aFailureMayBeAnException() {
    test("kind: verification, result: fail, reason: open")
        .with("exceptions", "- {id: x1, kind: changed, what: Left as is, run: r1}")
        .findsNo("failed-test-without-exception");
  }
}
