/** What trays weighed, what their eggs lost, and the humidity that lands them in the band. */
@NullMarked
package eggwright.climate.weight;

import org.jspecify.annotations.NullMarked;
