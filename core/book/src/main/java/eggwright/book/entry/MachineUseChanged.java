package eggwright.book.entry;

import eggwright.book.name.MachineName;

/** A machine went out of use, or came back. */
public record MachineUseChanged(MachineName machine, MachineUse use, String why) implements Payload {
    public MachineUseChanged {
        why = Checks.text("Why", why);
    }
}
