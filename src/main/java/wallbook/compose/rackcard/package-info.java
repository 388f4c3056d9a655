/**
 * The card for the rack's door: one sheet that tells what comes home where, how to read a label,
 * whom to call and what to leave plugged in. It hangs in the open, so it tells nothing of what
 * watches the house.
 */
package wallbook.compose.rackcard;
