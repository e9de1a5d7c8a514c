package eggwright.book.picture;

import java.util.List;

/**
 * Second, blind looks at a load. They mark and take nothing out, so they are none of its looks: fertility, losses and what
 * is due are told by the usual looks alone.
 *
 * @param asked what the desk asked for, in time order
 * @param taken what was looked at, in time order
 */
public record SecondLooks(List<SecondLook> asked, List<LookTaken> taken) {
    /** None asked for and none taken. */
    public static final SecondLooks NONE = new SecondLooks(List.of(), List.of());

    public SecondLooks {
        asked = List.copyOf(asked);
        taken = List.copyOf(taken);
    }
}
