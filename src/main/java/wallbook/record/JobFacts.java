package wallbook.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Angle;
import wallbook.quantity.Area;
import wallbook.quantity.Temperature;

/** What the whole job is and who took part. */
public record JobFacts(
    Origin origin,
    @Says(value = "Short name of the job; names the package's folder.", example = "lakeside")
        @LocalName
        String id,
    @Says(value = "Title on every document.", example = "House by the lake") String title,
    @Says("Where the house is.") Optional<String> address,
    @Says(value = "Day of the handover.", example = "2026-05-14") Optional<LocalDate> handover,
    @Says(value = "Number of this issue of the record, from 1.", example = "1") int revision,
    @Says("Earlier and present issues, the oldest first.") List<Revision> history,
    @Says("Units to print; feet and inches unless said otherwise.") Optional<PrintUnits> units,
    @Says(value = "Language of the documents as a language tag.", example = "en-US")
        Optional<String> language,
    @Says("Paper size; Letter for feet and inches, A4 for metric unless said otherwise.")
        Optional<Paper> paper,
    @Says(value = "Floor area of the house.", example = "4200 sq ft") Optional<Area> houseArea,
    @Says(
            value = "Direction of true north on the plans, clockwise from the top of the page.",
            example = "20 deg")
        Optional<Angle> north,
    @Says(value = "Highest temperature expected where runs pass the attic.", example = "50 °C")
        Optional<Temperature> atticHigh,
    @Says("Whether the job is a demonstration with invented data; printed on every page.")
        Optional<Boolean> invented,
    @Says("Owner, integrator, builder, trades and providers.") List<Party> parties,
    @Says("Authority having jurisdiction, as the integrator states it.")
        Optional<String> jurisdiction,
    @Says(
            value = "Adopted codes with edition, as the integrator states them.",
            example = "NEC 2023 as locally amended")
        List<String> codes,
    @Says("The integrator's own look of the documents.") Optional<Look> look,
    @Says("Anything a later reader should know.") Optional<String> note,
    @Says(
            value =
                "Whom this part of a record was made for. Stands only in an extract that a document"
                    + " for somebody outside the household carries; never in a whole record.",
            example = "the landscaper")
        Optional<String> extractFor) {
  public JobFacts {
    history = List.copyOf(history);
    parties = List.copyOf(parties);
    codes = List.copyOf(codes);
  }
}
