/**
 * What every run, fibre, coax, wire and conduit can carry: takes the job and the reference tables,
 * gives {@linkplain wallbook.assess.Assessment assessments} with value, limit, margin, limiting
 * factor and source. One package beneath for each medium. Pure computation: it knows nothing of
 * documents or YAML and does no input or output.
 */
package wallbook.assess;
