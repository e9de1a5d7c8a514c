package eggwright.climate.development;

/**
 * When a set will hatch, as its eggs were warm. Ranges hold what the rate of development leaves open, the storage, and what
 * is learnt of the machine: about four in five (not yet held against farms).
 *
 * @param firstPip the first egg pipped
 * @param from the first chicks
 * @param middle half of them
 * @param to the last
 * @param hoursLater than the plain calendar
 * @param developed how far it had come when this was asked, 0 to 1
 */
public record HatchExpected(When firstPip, When from, When middle, When to, Span hoursLater, Span developed) {}
