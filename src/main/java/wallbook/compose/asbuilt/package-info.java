/**
 * The technician's as-built: schedules by room, head and system, the house in one line, a sheet a
 * conduit, test results beside their limits, what each cable may carry, and where every unfinished
 * end is. Takes the composition, gives one view model; it knows nothing of how it is printed.
 */
package wallbook.compose.asbuilt;
