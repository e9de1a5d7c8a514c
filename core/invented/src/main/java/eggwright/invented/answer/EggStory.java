package eggwright.invented.answer;

import eggwright.book.name.PenName;
import java.time.LocalDate;

/**
 * What really happened to one egg.
 *
 * @param fate what became of it
 * @param day of incubation on which it died, was taken out alive, or hatched; 0 for an egg that never began
 */
public record EggStory(PenName pen, LocalDate laidOn, Germ germ, TrueFate fate, int day) {}
