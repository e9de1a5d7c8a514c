package eggwright.desk.device;

import eggwright.book.name.DeviceName;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Pass;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.joining.Devices;
import eggwright.desk.who.May;
import eggwright.desk.who.Role;
import eggwright.desk.who.Visitor;
import eggwright.desk.words.Words;
import eggwright.units.OutOfRange;
import java.util.Optional;

/** How a device joins, and how the owner signs in and out. All that is open to a device that has not joined. */
public final class ArrivalPages implements Pages {
    private final Devices devices;

    public ArrivalPages(Devices devices) {
        this.devices = devices;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/join", May.ANYBODY, this::askToJoin);
        routes.write("/join", May.ANYBODY, this::join);
        routes.read("/sign-in", May.ANYBODY, visit -> signInPage(200, visit, ""));
        routes.write("/sign-in", May.ANYBODY, this::signIn);
        routes.write("/sign-out", May.ANYBODY, this::signOut);
    }

    private static Words words(Visit visit) {
        return Words.beside(ArrivalPages.class, visit.language());
    }

    private Answer askToJoin(Visit visit) {
        return visit.visitor() instanceof Visitor.ThisMachine
                ? Answer.onward("/settings/devices")
                : joinPage(200, visit.asked().text("code"), "", "");
    }

    private static Answer joinPage(int status, String code, String name, String message) {
        return new Answer.Page(status, "device/join.jte", new JoinPage(code, name, message));
    }

    private Answer join(Visit visit) {
        if (visit.visitor() instanceof Visitor.ThisMachine) {
            return Answer.onward("/settings/devices");
        }
        var words = words(visit);
        var code = visit.typed().text("code");
        var typed = visit.typed().text("name");
        var name = name(typed);
        if (code.isBlank() || name.isEmpty()) {
            return joinPage(422, code, typed, words.say(code.isBlank() ? "join.noCode" : "join.noName"));
        }
        return switch (devices.join(code, name.get(), visit.from())) {
            case Devices.Entrance.In(var device, var token) -> new Answer.CameIn(Pass.DEVICE, token, "/");
            case Devices.Entrance.NotRight() -> joinPage(422, code, typed, words.say("join.notRight"));
            case Devices.Entrance.TooOften() -> joinPage(429, code, typed, words.say("join.tooOften"));
        };
    }

    private static Optional<DeviceName> name(String typed) {
        try {
            return Optional.of(new DeviceName(typed));
        } catch (OutOfRange notAName) {
            return Optional.empty();
        }
    }

    private Answer signInPage(int status, Visit visit, String message) {
        var words = words(visit);
        var page = switch (visit.visitor()) {
            case Visitor.ThisMachine here ->
                new SignInPage(
                        words.say("signIn.here"), SignInPage.State.HERE, SignInPage.Naming.HAS_A_NAME, "", message);
            case Visitor.Joined joined ->
                new SignInPage(
                        words.say(
                                "signIn.joined",
                                joined.name().text(),
                                words.say("role." + joined.as().word())),
                        state(joined),
                        SignInPage.Naming.HAS_A_NAME,
                        "",
                        message);
            case Visitor.Nobody nobody -> stranger(message, visit, words);
            case Visitor.Bearer bearer -> stranger(message, visit, words);
        };
        return new Answer.Page(status, "device/sign-in.jte", page);
    }

    private static SignInPage stranger(String message, Visit visit, Words words) {
        return new SignInPage(
                words.say("signIn.nobody"),
                SignInPage.State.OUT,
                SignInPage.Naming.WANTS_A_NAME,
                visit.typed().text("name"),
                message);
    }

    private SignInPage.State state(Visitor.Joined joined) {
        if (devices.isSignedIn(joined.id())) {
            return SignInPage.State.IN;
        }
        return joined.as() == Role.OWNER ? SignInPage.State.HERE : SignInPage.State.OUT;
    }

    private Answer signIn(Visit visit) {
        if (visit.visitor() instanceof Visitor.ThisMachine) {
            return Answer.onward("/");
        }
        var words = words(visit);
        var name = visit.visitor() instanceof Visitor.Joined joined
                ? Optional.of(joined.name())
                : name(visit.typed().text("name"));
        if (name.isEmpty()) {
            return signInPage(422, visit, words.say("join.noName"));
        }
        return switch (devices.signIn(visit.typed().text("passphrase"), visit.visitor(), name.get(), visit.from())) {
            case Devices.Entrance.In(var device, var token) -> new Answer.CameIn(Pass.OWNER, token, "/");
            case Devices.Entrance.NotRight() -> signInPage(422, visit, words.say("signIn.notRight"));
            case Devices.Entrance.TooOften() -> signInPage(429, visit, words.say("signIn.tooOften"));
        };
    }

    private Answer signOut(Visit visit) {
        if (visit.visitor() instanceof Visitor.Joined joined) {
            devices.signOut(joined.id());
        }
        return new Answer.WentOut(Pass.OWNER, "/sign-in");
    }
}
