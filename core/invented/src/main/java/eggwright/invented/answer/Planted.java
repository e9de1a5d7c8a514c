package eggwright.invented.answer;

import eggwright.book.name.EntryId;
import eggwright.book.picture.DiscrepancyKind;

/** A discrepancy that the season was given on purpose, and the entry that brings it up. */
public record Planted(EntryId entry, DiscrepancyKind kind) {}
