package eggwright.book.picture;

import eggwright.book.entry.TakenOff;
import java.time.OffsetDateTime;

/** A pull, and when it was. One that was counted for a basket of several sets stands with each of them. */
public record PullTaken(OffsetDateTime at, TakenOff what) {}
