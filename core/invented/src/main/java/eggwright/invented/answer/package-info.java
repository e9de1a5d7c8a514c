/** What really happened to every egg of an invented season: what forecasts and findings are judged by. */
@NullMarked
package eggwright.invented.answer;

import org.jspecify.annotations.NullMarked;
