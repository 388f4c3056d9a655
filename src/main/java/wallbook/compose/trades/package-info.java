/**
 * A sheet for each trade: the landscaper, the electrician, the service provider, the builder. Each
 * tells its reader's own part and nothing else; what watches the house never stands in one, and
 * none carries the record. Takes the composition, gives one view model a sheet.
 */
package wallbook.compose.trades;
