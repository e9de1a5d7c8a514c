package eggwright.desk.device;

import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Reach;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.joining.Device;
import eggwright.desk.joining.Devices;
import eggwright.desk.joining.Secrets;
import eggwright.desk.network.FirstSteps;
import eggwright.desk.picture.QrCode;
import eggwright.desk.who.May;
import eggwright.desk.who.Role;
import eggwright.desk.who.Visitor;
import eggwright.desk.words.Words;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The devices in the settings: who has joined, letting another join, putting one out; and the sheet to be hung up. */
public final class DevicePages implements Pages {
    private static final String HERE = "/settings/devices";
    private static final List<Role> USUAL_FIRST = List.of(Role.HAND, Role.LOOKER, Role.OWNER);
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Devices devices;
    private final Reach reach;
    private final Supplier<String> farm;
    private final Supplier<ZonedDateTime> time;

    /** @param time the desk's clock, in the farm's time zone */
    public DevicePages(Devices devices, Reach reach, Supplier<String> farm, Supplier<ZonedDateTime> time) {
        this.devices = devices;
        this.reach = reach;
        this.farm = farm;
        this.time = time;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read(HERE, May.RUN, visit -> list(200, visit, ""));
        routes.write(HERE + "/code", May.RUN, this::code);
        routes.write(HERE + "/{device}/role", May.RUN, this::change);
        routes.write(HERE + "/{device}/let-go", May.RUN, this::letGo);
        routes.read(HERE + "/sheet", May.RUN, this::sheet);
        routes.read("/settings/passphrase", May.HERE, visit -> passphrase(200, "", ""));
        routes.write("/settings/passphrase", May.HERE, this::setPassphrase);
    }

    private static Words words(Visit visit) {
        return Words.beside(DevicePages.class, visit.language());
    }

    private Answer list(int status, Visit visit, String message) {
        var words = words(visit);
        var now = time.get().toInstant();
        var all = devices.all().reversed();
        return new Answer.Page(
                status,
                "device/devices.jte",
                new DevicesPage(
                        message,
                        reach.address().map(Object::toString).orElse(""),
                        all.stream()
                                .filter(d -> d.isIn(now))
                                .map(d -> row(d, visit, words))
                                .toList(),
                        all.stream()
                                .filter(d -> !d.isIn(now))
                                .map(d -> row(d, visit, words))
                                .toList(),
                        choices(Role.HAND, words),
                        words.say(devices.hasPassphrase() ? "passphrase.set" : "passphrase.none"),
                        visit.visitor() instanceof Visitor.ThisMachine ? "/settings/passphrase" : ""));
    }

    private DevicesPage.Row row(Device device, Visit visit, Words words) {
        var path = HERE + "/" + device.id();
        var isYou =
                visit.visitor() instanceof Visitor.Joined joined && joined.id().equals(device.id());
        return new DevicesPage.Row(
                device.name().text(),
                device.way() == Device.Way.PASSPHRASE
                        ? words.say("row.signedIn")
                        : words.say("role." + device.role().word()),
                stamp(device.joined()),
                stamp(device.seen()),
                isYou ? words.say("row.you") : "",
                device.way() == Device.Way.CODE ? path + "/role" : "",
                path + "/let-go",
                choices(device.role(), words));
    }

    private String stamp(Instant at) {
        return STAMP.format(at.atZone(time.get().getZone()));
    }

    private static List<DevicesPage.Choice> choices(Role chosen, Words words) {
        return USUAL_FIRST.stream()
                .map(role -> new DevicesPage.Choice(
                        role.word(),
                        words.say("role." + role.word()),
                        words.say("role." + role.word() + ".may"),
                        role == chosen))
                .toList();
    }

    private Answer code(Visit visit) {
        var words = words(visit);
        return switch (reach) {
            case Reach.ThisMachine only -> list(422, visit, "");
            case Reach.Network(var lan) ->
                switch (devices.invite(Role.of(visit.typed().text("role")).orElse(Role.LOOKER))) {
                    case Devices.Invitation.Code(var code, var role, var ends) -> {
                        var address = lan.address().resolve("/join");
                        yield Answer.page(
                                "device/code.jte",
                                new CodePage(
                                        Secrets.spaced(code),
                                        QrCode.inline(address + "?code=" + code, words.say("code.drawing")),
                                        address.toString(),
                                        TIME.format(ends.atZone(time.get().getZone())),
                                        words.say("role." + role.word()),
                                        lan.firstSteps().toString()));
                    }
                    case Devices.Invitation.TooMany() -> list(429, visit, words.say("code.tooMany"));
                };
        };
    }

    private Answer change(Visit visit) {
        var role = Role.of(visit.typed().text("role"));
        var changed = role.flatMap(r -> devices.change(visit.at("device"), r));
        return changed.map(device -> Answer.onward(HERE)).orElseGet(() -> noSuch(visit));
    }

    private Answer letGo(Visit visit) {
        return devices.letGo(visit.at("device"))
                .map(device -> Answer.onward(HERE))
                .orElseGet(() -> noSuch(visit));
    }

    private static Answer noSuch(Visit visit) {
        return Answer.notThere(words(visit).say("noSuch"));
    }

    private Answer sheet(Visit visit) {
        return switch (reach) {
            case Reach.ThisMachine only -> list(422, visit, "");
            case Reach.Network(var lan) ->
                Answer.page(
                        "device/sheet.jte",
                        new SheetPage(
                                FirstSteps.to(lan, farm.get(), "", visit.language()),
                                QrCode.inline(
                                        lan.firstSteps().toString(),
                                        words(visit).say("sheet.drawing"))));
        };
    }

    private static Answer passphrase(int status, String message, String kept) {
        return new Answer.Page(status, "device/passphrase.jte", new PassphrasePage(message, kept));
    }

    private Answer setPassphrase(Visit visit) {
        var words = words(visit);
        var typed = visit.typed().text("passphrase");
        var problem = Stream.of(
                        typed.length() < Devices.SHORTEST_PASSPHRASE
                                ? words.say("passphrase.short", Devices.SHORTEST_PASSPHRASE, typed.length())
                                : "",
                        typed.length() > Devices.LONGEST_PASSPHRASE
                                ? words.say("passphrase.long", Devices.LONGEST_PASSPHRASE, typed.length())
                                : "",
                        typed.equals(visit.typed().text("again")) ? "" : words.say("passphrase.differs"))
                .filter(said -> !said.isEmpty())
                .findFirst();
        if (problem.isPresent()) {
            return passphrase(422, problem.get(), "");
        }
        devices.setPassphrase(typed);
        return passphrase(200, "", words.say("passphrase.kept"));
    }
}
