/**
 * What lies outdoors: takes the stub-outs and outdoor runs of a job, gives the cover over them
 * against the code's least and whether the cable carries the marks its surroundings ask for. It
 * knows nothing of what the cable carries beyond its voltage, or of documents.
 */
package wallbook.assess.outdoor;
