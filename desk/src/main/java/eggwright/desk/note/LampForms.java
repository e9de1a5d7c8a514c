package eggwright.desk.note;

import java.util.List;

/** At the lamp and at the bench: looks and break-outs. */
final class LampForms {
    static final List<EntryForm> ALL = List.of(LookForm.of(), SecondLookForm.of(), BreakOutForm.of());

    private LampForms() {}
}
