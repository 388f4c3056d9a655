/**
 * Looks a job over as an integrator would before anyone signs: contradictions, slips and gaps. A
 * job goes in, findings with the place of each in the record come out. The package knows nothing of
 * what the wiring can carry, nor of documents.
 */
package wallbook.check;
