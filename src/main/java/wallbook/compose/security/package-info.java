/**
 * The owner's security annex: where every keypad, contact, sensor, repeater and camera is, on what
 * cable, in what state, and what replaced it. For the owner alone.
 */
package wallbook.compose.security;
