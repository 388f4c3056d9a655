package wallbook.render.data;

import java.util.Optional;

/**
 * What became of one record of many.
 *
 * @param record path of the record below the folder searched, with slashes
 * @param job id of the job, if the record could be understood that far
 * @param title title of the job
 * @param revision revision of the record
 * @param packageName name of the folder stored, if one was
 * @param errors how many errors the record has
 * @param warnings how many warnings
 * @param exitCode what building it alone would have ended with
 * @param failure what broke, if the program failed and not the record
 */
public record HouseOutcome(
    String record,
    String job,
    String title,
    String revision,
    Optional<String> packageName,
    int errors,
    int warnings,
    int exitCode,
    Optional<String> failure) {}
