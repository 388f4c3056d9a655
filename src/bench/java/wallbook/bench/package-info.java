/**
 * Means to measure the program: invented records of any size, benchmarks of the stages, and the
 * yardsticks that whole runs are held against. Nothing of it is part of the program.
 */
package wallbook.bench;
