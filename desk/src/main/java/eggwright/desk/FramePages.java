package eggwright.desk;

import eggwright.desk.who.May;

/** The one form of the frame itself: how the pages are coloured. */
final class FramePages implements Pages {
    @Override
    public void addTo(Routes routes) {
        routes.write("/look", May.ANYBODY, FramePages::choose);
    }

    private static Answer choose(Visit visit) {
        var look = visit.typed().one(Look.FIELD).flatMap(Look::of).orElse(Look.SYSTEM);
        var back = visit.typed().one("back").filter(OwnPath::is).orElse("/");
        return new Answer.LookChosen(look, back);
    }
}
